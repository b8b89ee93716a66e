// Which screen of one machine the address means.
import { ComponentNew } from "./component/fit";
import { ComponentScreen } from "./component/move";
import { Defer } from "./due/defer";
import { DueScreen } from "./due/form";
import { ChooseJobs } from "./job/choose";
import { PlanJobs } from "./job/plan";
import { Flight } from "./flight/flight";
import { Release } from "./job/release";
import { LimitScreen } from "./limit";
import { MachineScreen } from "./machine";
import { EditMachine } from "./machine-form";
import { PutRight } from "./put-right";
import { Enrol } from "./school/enrol";
import { SecondAsk } from "./second/ask";
import { SecondHere } from "./second/here";
import { TakeReadings } from "./logs/take";
import { LogTime } from "./time/log";
import { Trends } from "./trends/trends";
import { Verdict } from "./verdict";

export function OfMachine({ id, deed, what }: { id: string; deed: string | undefined; what: string | undefined }) {
  if (deed === "edit") return <EditMachine id={id} />;
  if (deed === "verdict") return <Verdict machine={id} />;
  if (deed === "right" && what) return <PutRight machine={id} point={what} />;
  if (deed === "defer" && what) return <Defer machine={id} point={what} />;
  if (deed === "limit" && what) return <LimitScreen machine={id} band={what} />;
  if (deed === "flight") return <Flight machine={id} occasion={what} />;
  if (deed === "log") return <LogTime machine={id} />;
  if (deed === "trends") return <Trends machine={id} measure={what} />;
  if (deed === "readings") return <TakeReadings machine={id} />;
  if (deed === "work") return what === "plan" ? <PlanJobs machine={id} /> : <ChooseJobs machine={id} />;
  if (deed === "school") return <Enrol machine={id} />;
  if (deed === "release") return <Release machine={id} />;
  if (deed === "second") return what === "here" ? <SecondHere machine={id} /> : <SecondAsk machine={id} />;
  if (deed === "due" && what) return <DueScreen machine={id} item={what} />;
  if (deed === "component" && what) return what === "new" ? <ComponentNew machine={id} /> : <ComponentScreen machine={id} component={what} />;
  return <MachineScreen id={id} />;
}
