// Which screen the address means.
//
// Every screen's root carries `data-screen`, and what a journey touches carries `data-test`:
//   first         language, name, pin, pin-twice, begin, first-as
//   machines      walk or go-on-working, log, work, machine-ID, open-ID, verdict-ID, add-machine, to-code, to-look, to-tools, to-verify, to-school,
//                 to-settings, empty-add, empty-demo; where there is a school: school-line (data-state)
//   machine-form  machine-name, engine-ID, part-ID, serials, serial-ID, repacked, every-days, hours, flights, machine-note,
//                 machine-load, weight, load-unit, wing-low, wing-high, wing-free-low, -free-high, wing-document, wing-page, pin, sign
//   machine       to-verdict, walk-OCCASION, put-right-POINT, defer-POINT, entry-KIND, limit-BAND, edit, to-tools, export,
//                 exported, log, work, waiting, due-ID (data-standing), due-new, component-ID (data-fitted), component-new;
//                 to-enrol (data-enrolled), label, csv, calendar, paper-saved; with open work: job (data-ready), job-lacks, job-plan, walk-after-service, job-second, job-release
//                 drifts, drifts-MEASURE, drifts-none, to-trends, to-readings
//   trends        trend-MEASURE (data-direction, data-drifts), says-MEASURE, chart-MEASURE, reading-MEASURE, reading-open-MEASURE,
//                 before-MEASURE, after-MEASURE, marks-MEASURE, band-MEASURE, table-open-MEASURE, table-MEASURE, chart-key, to-readings, trends-none
//   readings      readings-file; readings-columns: mapping (data-remembered), column-N (data-holds), holds-N, unit-N, time-form,
//                 column-said-N, mapping-change, mapping-confirm, readings-other; readings-told: readings-rows (data-unread),
//                 readings-unread, figure-MEASURE, readings-hours, readings-on, readings-outside, readings-outside-unit, pin, sign,
//                 mapping-back; readings-taken: readings-again, taken-record, readings-other
//   fleet         life-COMPONENT (data-failed), fleet-none, to-looking, to-worth
//   life          rests-on, intervals (data-shortens), life-every, life-says, life-table-open, life-table, life-ask, life-chance, life-in-force
//   looking       looking-caution, looks-NAME, looking-none
//   worth         worth-caution, worth-never, -often, -plain, -few, worth-point-POINT, worth-none
//   flight        flight-open-PART, flight-part-PART (data-state), flight-out-PART, flight-VALUE, flight-VALUE-unit, flight-fault,
//                 flight-wing, flight-to-wing, flight-plain, flight-pour, flight-burns, flight-by-altimeter, -field, flight-measured,
//                 flight-school, pad-next, pad-away and the keys, flight-verdict (data-state), flight-keep; the way there: to-flight (data-state)
//   log           log-burned-open, log-burned, log-burned-unit, tank, minutes-15, -20, -30, -45, -60, log-other, log-times, log-meter, log-hours, log-flights, log-tanks,
//                 log-note, log-typed, log-now, logged, waiting, log-done, log-undo
//   work          job-JOB, to-plan, work-open, go-on-working
//   plan          order-off, order-back, plan-renew, plan-count, plan-independent, plan-later, work-note, pin, sign
//   release       pin, sign
//   walk-map      go-on, to-summary, step-back, stop-STATION, station-STATION, point-POINT
//   point         read-aloud, answer-ANSWER (with data-means), value, unit, key-0 … key-9, key-., key-erase, judged (data-means), source,
//                 enter, photo, say-more, note, note-keep, leave or go-on, step-back, to-map; shows critical,
//                 caution, last-time, said, noted, stepped-back
//                 of a joint to tighten: no-number, to-limit, use-tool-TOOL, tool-new, setting, spread, against, adapter,
//                 adapter-fitted, adapter-lever, adapter-length, adapter-unit, adapter-angle, eighths-0, -1, -2, -4,
//                 eighths-more, eighths-less, eighths-plus, eighths-value, clicked, nut-back, torque-anew, other-tool,
//                 moved, reading, reading-unit, reason, torque-done; of a refused tool first: against, reason, use-all-the-same
//   summary       preview (data-state), found-POINT, left-POINT, hurried-POINT, hold-to-sign, sign-with-pin, put-aside, step-back, more;
//                 then sign-sheet: pin, key-0 … key-9, sign, sign-not-yet
//   verdict       verdict (data-state), reason-RULE, to-machine
//   put-right     how, pin, sign
//   defer         defer-hours, defer-flights, defer-date, defer-condition, defer-reason, pin, sign
//   due           due-title, due-hours, due-flights, due-tanks, due-days, due-done-now, due-done-on, due-done-hours,
//                 due-done-flights, due-tolerance, due-from-due, due-ended, pin, sign
//   component-new component-part, component-name, component-serial, component-hours, -flights, -tanks, pin, sign
//   component     move-off, move-MACHINE, pin, sign
//   second        code, code-copy, code-share, code-as-text, code-out, second-here, and the reader's
//   second-here   who-DEVICE, joint-JOINT-serviceable, joint-JOINT-unserviceable, joint-JOINT-note, pin, sign, second-new,
//                 second-name, second-pin, second-pin-twice, second-add
//   look          the reader's; then look-joints: own, joint-… as above, pin, sign, look-anew; then look-reply: code, …
//   code          the reader's: code-camera, code-view, code-camera-off, code-picture, code-text, code-take
//   first-as      the reader's; then pin, pin-twice, begin, first-as-anew
//   school-none   own-code, to-join, to-address, to-found, to-device, to-board
//   school-found  school-name, pin, sign
//   school-join   own-code, code, …, the reader's; school-answer: pin, sign, answer-anew
//   school-address address, address-look; school-card: school-code, own-code, pin, sign, address-anew
//   school        sync (data-state), sync-waiting, to-server, own-code, to-board, to-admit, to-code, member-PERSON (data-role,
//                 data-standing), members-before, enrolled-MACHINE (data-enrolled), published (data-used), to-publish, to-device,
//                 to-join, to-address, to-leave, school-file, school-file-saved
//   member        to-role, to-end, device-CODE (data-ended), to-key-end-CODE, to-hand-CODE
//   member-role   role-ROLE, role-until, pin, sign; member-end and key-end: end-reason, pin, sign; root-hand: pin, sign
//   admit         the reader's, applicant-CODE, waiting-again; admit-as: applicant-code, role-ROLE, role-until, pin, sign,
//                 admit-anew; admitted: code, …
//   own-device    own-code, code, …, the reader's; device-vouch: applicant-code, pin, sign, device-anew; device-vouched and
//                 device-back: code, …; device-done
//   school-leave  pin, sign
//   enrol         pin, sign
//   server        sync (data-state), sync-waiting, sync-now, stuck, sync-retry, receipts, receipts-result (data-good), to-compare,
//                 anew, server-anew, to-refused, to-address
//   compare       code, …, the reader's, receipts-result
//   refused       refused-NUMBER, refused-away-NUMBER
//   publish       publish-files, file-NAME, folder-NAME, without-NAME, publish-preview (data-good), publish-fault, publish-title,
//                 publish-note, pin, sign
//   board         second-MACHINE, filter-state, filter-owner, filter-due, filter-second, board-shown, board-table, row-MACHINE
//                 (data-state), board-MACHINE, person-PERSON
//   desk          pin, sign; desk-draft: preview (data-state), pin, sign; desk-done: desk-anew
//   torque-tools  tool-TOOL (data-usable), tool-new
//   tool-form     tool-name, tool-low, tool-high, tool-unit, tool-deviation, tool-calibrated, tool-every-days,
//                 tool-every-cycles, tool-clicks, tool-dropped, pin, sign
//   limit         source, low, high, unit, document, page, pin, sign
//   record        sheet-a4, sheet-letter, paper-saved, signature (data-good), finding-POINT, otherwise-POINT, digest, payload
//   otherwise     choice-ANSWER, reason, pin, sign
//   verify        verify-file, verify-text, verify, verified (data-good), fault-WHAT, take-in, taken-in (data-taken)
//   settings      thumbprint, language, settings-aloud or no-voice, unit-KIND, patience, settings-keep, settings-kept, export-all, change-pin, pin-old, pin-new, pin-twice, pin-change
// On every screen: back, fault (with data-kind), try-again.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "./calls";
import { Waiting } from "./parts/page";
import { route } from "./route";
import { BoardScreen } from "./screens/board/board";
import { Desk } from "./screens/desk/desk";
import { First } from "./screens/first";
import { FirstAs } from "./screens/first-as";
import { Fleet } from "./screens/fleet/fleet";
import { Life } from "./screens/fleet/life";
import { Looking } from "./screens/fleet/looking";
import { Worth } from "./screens/fleet/worth";
import { LookForOther } from "./screens/second/for-other";
import { LookHere } from "./screens/second/look-here";
import { NewMachine } from "./screens/machine-form";
import { OfMachine } from "./screens/of-machine";
import { Machines } from "./screens/machines";
import { OpenCode } from "./screens/open-code";
import { Otherwise } from "./screens/otherwise";
import { OfSchool } from "./screens/school/of-school";
import { RecordScreen } from "./screens/record";
import { Settings } from "./screens/settings";
import { Verify } from "./screens/verify";
import { WalkScreens } from "./screens/walk";
import { ToolForm } from "./screens/wrench/form";
import { ToolList } from "./screens/wrench/list";
import { useWatch } from "./school";
import { announced, open, start } from "./state";

export function App() {
  const [fault, setFault] = useState<Fault | null>(null);
  const begin = () => open().then(() => setFault(null), (thrown) => setFault(asFault(thrown)));
  useEffect(() => void begin(), []);
  useWatch(Boolean(start.value?.person));
  if (!start.value) return <Waiting screen="start" fault={fault} again={begin} />;
  if (!start.value.person) return route.value[0] === "again" ? <FirstAs /> : <First />;
  return (
    <>
      <p class="unseen" role="status">{announced.value}</p>
      <Screen key={keyOf(route.value)} parts={route.value} />
    </>
  );
}

/** Screens of one walk share what they have loaded; every other address is a screen of its own. */
function keyOf(parts: string[]): string {
  return (parts[0] === "walk" ? parts.slice(0, 3) : parts).join("/");
}

function Screen({ parts }: { parts: string[] }) {
  const [kind, id, deed, what] = parts;
  if (kind === "verify") return <Verify />;
  if (kind === "settings") return <Settings />;
  if (kind === "walk" && id && deed) return <WalkScreens machine={id} occasion={deed} place={parts.slice(3)} />;
  if (kind === "tools") return id ? <ToolForm id={id} then={parts.slice(2)} /> : <ToolList />;
  if (kind === "look") return id ? <LookHere machine={id} /> : <LookForOther />;
  if (kind === "code") return <OpenCode />;
  if (kind === "desk") return <Desk />;
  if (kind === "school") return <OfSchool place={parts.slice(1)} />;
  if (kind === "board") return <BoardScreen />;
  if (kind === "fleet") return id ? <Life component={id} /> : <Fleet />;
  if (kind === "looking") return <Looking />;
  if (kind === "worth") return <Worth />;
  if (kind === "machine" && id) return id === "new" ? <NewMachine /> : <OfMachine id={id} deed={deed} what={what} />;
  if (kind === "record" && id)
    return deed && what === "otherwise" ? <Otherwise digest={id} point={deed} /> : <RecordScreen digest={id} point={deed} />;
  return <Machines />;
}
