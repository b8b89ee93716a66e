// The files by which a server is set up: the unit by systemd's own checks, where they are installed; the
// container file by npm's dockerfile-utils.
//   node deploy.mjs WITNESSMARK
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { validate } from "dockerfile-utils";
import { check, done } from "./tally.mjs";

const FOLDER = new URL("../../shared/server/deploy/", import.meta.url);
const read = (name) => readFileSync(new URL(name, FOLDER), "utf8");
const [program] = process.argv.slice(2);

function container() {
  const text = read("Containerfile");
  const faults = validate(text).map((fault) => `line ${fault.range.start.line + 1}: ${fault.message}`);
  check("the container file is one", faults.length === 0, faults.join("; "));
  check("a broken one would be told", validate(text.replace("ENTRYPOINT [", "ENTRYPIONT [")).length > 0);
  const last = text.split(/^FROM /m).at(-1);
  check("it is run by a user without rights", /^USER 7430:7430$/m.test(last) && !/^USER (root|0)/m.test(last));
  check("it has one volume", last.match(/^VOLUME (.*)$/gm)?.join() === 'VOLUME ["/data"]');
}

function unit() {
  if (spawnSync("systemd-analyze", ["--version"]).error) return;
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-unit-"));
  const file = join(folder, "witnessmark-server.service");
  const analyze = (...args) => spawnSync("systemd-analyze", [...args, file], { encoding: "utf8" });
  // The program is looked for where it will be installed; here it is where it was built.
  writeFileSync(file, read("witnessmark-server.service").replace("/usr/local/bin/witnessmark", program));
  const good = analyze("verify");
  check("systemd verifies the unit", good.status === 0 && good.stderr === "", good.stderr);
  // In tenths: 0 is closed, 100 open.
  const closed = analyze("security", "--offline=true", "--threshold=20");
  check("systemd finds it closed", closed.status === 0, closed.stdout.trim().split("\n").at(-1));
  writeFileSync(file, read("witnessmark-server.service").replace("ProtectSystem=strict", "ProtectSystem=stirct"));
  check("systemd would tell a setting that is none", analyze("verify").stderr.includes("stirct"));
  rmSync(folder, { recursive: true });
}

container();
unit();
done();
