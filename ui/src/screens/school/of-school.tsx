// Which screen of the school the address means.
import { Admit } from "./admit";
import { Compare } from "./compare";
import { Found } from "./found";
import { Follow } from "./follow";
import { Join } from "./join";
import { Leave } from "./leave";
import { MemberScreen } from "./member";
import { EndKey, EndMember, HandRoot, MemberRole } from "./member-deeds";
import { OwnDevice } from "./own-device";
import { Publish } from "./publish";
import { Refused } from "./refused";
import { SchoolScreen } from "./school";
import { ServerScreen } from "./server";

export function OfSchool({ place }: { place: string[] }) {
  const [deed, who, what, which] = place;
  if (deed === "found") return <Found />;
  if (deed === "join") return <Join />;
  if (deed === "address") return <Follow />;
  if (deed === "admit") return <Admit />;
  if (deed === "device") return <OwnDevice />;
  if (deed === "server") return <ServerScreen />;
  if (deed === "compare") return <Compare />;
  if (deed === "refused") return <Refused />;
  if (deed === "publish") return <Publish />;
  if (deed === "leave") return <Leave />;
  if (deed === "member" && who) {
    if (what === "role") return <MemberRole person={who} />;
    if (what === "end") return <EndMember person={who} />;
    if (what === "key" && which) return <EndKey person={who} device={which} />;
    if (what === "hand" && which) return <HandRoot person={who} device={which} />;
    return <MemberScreen person={who} />;
  }
  return <SchoolScreen />;
}
