// Whether there is room for a table; as the style sheets measure it, in letters.
import { useEffect, useState } from "preact/hooks";

const ROOM = "(width >= 60rem)";

export function useWide(): boolean {
  const [wide, setWide] = useState(() => matchMedia(ROOM).matches);
  useEffect(() => {
    const room = matchMedia(ROOM);
    const turned = () => setWide(room.matches);
    room.addEventListener("change", turned);
    return () => room.removeEventListener("change", turned);
  }, []);
  return wide;
}
