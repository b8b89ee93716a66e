// Counting checks: one line each, and the exit code says whether all passed.
let failed = 0;

export function check(name, passed, why = "") {
  if (!passed) failed += 1;
  console.log(passed ? `ok ${name}` : `FAILED ${name}${why && `: ${why}`}`);
}

export function done() {
  process.exit(failed ? 1 : 0);
}
