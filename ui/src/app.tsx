// Which screen the address means.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "./calls";
import { Waiting } from "./parts/page";
import { route } from "./route";
import { First } from "./screens/first";
import { Machines } from "./screens/machines";
import { Verdict } from "./screens/verdict";
import { WalkScreens } from "./screens/walk";
import { open, start } from "./state";

export function App() {
  const [fault, setFault] = useState<Fault | null>(null);
  const begin = () => open().then(() => setFault(null), (thrown) => setFault(asFault(thrown)));
  useEffect(() => void begin(), []);
  if (!start.value) return <Waiting screen="start" fault={fault} again={begin} />;
  if (!start.value.person) return <First />;
  return <Screen key={keyOf(route.value)} parts={route.value} />;
}

/** Screens of one walk share what they have loaded; every other address is a screen of its own. */
function keyOf(parts: string[]): string {
  return (parts[0] === "walk" ? parts.slice(0, 3) : parts).join("/");
}

function Screen({ parts: [kind, id, deed, what] }: { parts: string[] }) {
  if (kind === "walk" && id && deed) return <WalkScreens machine={id} occasion={deed} place={route.value.slice(3)} />;
  if (kind === "machine" && id && deed === "verdict") return <Verdict machine={id} />;
  void what;
  return <Machines />;
}
