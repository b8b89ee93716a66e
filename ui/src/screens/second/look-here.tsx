// A machine whose records came by the server asks for a second look: it is opened as if its code had been shown.
import { useEffect } from "preact/hooks";
import { call } from "../../calls";
import { layReady } from "../../drafts";
import { useAct } from "../../hooks";
import { Waiting } from "../../parts/page";
import { turnTo } from "../../route";
import { t } from "../../words";

export function LookHere({ machine }: { machine: string }) {
  const { fault, act } = useAct();
  const open = () =>
    act(async () => {
      const { text } = await call("second-look-ask", { machine });
      layReady("look/asked", { text, view: await call("second-look-open", { text }) });
      layReady("look/seen", {});
      layReady("look/reply", null);
      turnTo("look");
    });
  useEffect(() => void open(), []);
  return <Waiting screen="look" fault={fault} again={open} back={{ href: "#/board", words: t("board") }} />;
}
