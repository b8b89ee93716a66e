// Parts of an engine as seen from the side, each in a box of 120 by 56 with the axis at its middle.

interface PartShapeOf {
  outline: string;
  /** Lines within it. */
  lines?: string;
}

export const PART_SHAPES: Record<string, PartShapeOf> = {
  "plug-cap": { outline: "M48 50V22Q48 8 62 8H96V20H72V50Z", lines: "M52 30H68M52 38H68" },
  plug: { outline: "M54 4H66V16H76V28H68V46H52V28H44V16H54Z", lines: "M52 34H68M52 40H68M60 46V52H68" },
  shroud: { outline: "M22 50V22Q22 8 40 8H80Q98 8 98 22V50H84V24H36V50Z", lines: "M52 8V24M68 8V24" },
  exhaust: { outline: "M10 28Q10 12 30 12H64Q80 12 84 22H112V34H84Q80 44 64 44H30Q10 44 10 28Z", lines: "M30 12V44M64 12V44" },
  "exhaust-stub": { outline: "M36 10H44V18H84V38H44V46H36Z", lines: "M44 18V38M70 18V38" },
  head: { outline: "M22 50V40H30V32H22V24H30V16H22V8H98V16H90V24H98V32H90V40H98V50Z", lines: "M52 8V18H68V8" },
  cylinder: { outline: "M28 4H92V52H28Z", lines: "M20 12H100M20 20H100M20 28H100M20 36H100M20 44H100M46 4V52M74 4V52" },
  "air-box": { outline: "M24 12H96V44H24Z", lines: "M32 18L40 38M44 18L52 38M56 18L64 38M68 18L76 38M80 18L88 38" },
  "throttle-cable": { outline: "M14 22H40V34H14Z", lines: "M40 28H84Q100 28 104 12M84 22V34" },
  "fuel-line": { outline: "M12 20H24V36H12ZM96 20H108V36H96Z", lines: "M24 24Q60 4 96 24M24 34Q60 14 96 34" },
  "pulse-line": { outline: "M18 20H28V36H18ZM92 20H102V36H92Z", lines: "M28 28Q44 8 60 28T92 28" },
  carburettor: { outline: "M28 14H92V42H28ZM48 42H72V52H48Z", lines: "M60 28m-10 0a10 10 0 1 0 20 0a10 10 0 1 0 -20 0M50 34L70 22" },
  intake: { outline: "M40 6H80L92 50H28Z", lines: "M52 16L48 42M60 16V42M68 16L72 42" },
  propeller: { outline: "M4 30Q26 14 54 22V34Q26 40 4 30ZM66 22Q94 14 116 26Q94 42 66 34Z", lines: "M54 18H66V38H54Z" },
  hub: { outline: "M32 12H88V24H74V44H46V24H32Z", lines: "M40 12V24M80 12V24" },
  belt: { outline: "M32 14H88A14 14 0 0 1 88 42H32A14 14 0 0 1 32 14Z", lines: "M32 20H88A8 8 0 0 1 88 36H32A8 8 0 0 1 32 20Z" },
  "gear-oil-plug": { outline: "M44 10H76V22H68V46H52V22H44Z", lines: "M52 30H68M52 38H68" },
  "gear-cover": { outline: "M24 40Q24 10 60 10Q96 10 96 40V46H24Z", lines: "M32 38m-3 0a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M82 38m-3 0a3 3 0 1 0 6 0a3 3 0 1 0 -6 0" },
  "starter-pull": { outline: "M60 28m-24 0a24 24 0 1 0 48 0a24 24 0 1 0 -48 0Z", lines: "M60 28m-12 0a12 12 0 1 0 24 0a12 12 0 1 0 -24 0M84 28H106M106 20V36" },
  "starter-battery": { outline: "M30 16H90V46H30ZM40 10H48V16H40ZM72 10H80V16H72Z", lines: "M40 26H48M72 26H80M76 22V30" },
  "starter-motor": { outline: "M24 14H80V42H24ZM80 22H98V34H80Z", lines: "M34 14V42M98 24H106M98 32H106" },
  crankcase: { outline: "M34 8H86L98 28L86 50H34L22 28Z", lines: "M60 30m-10 0a10 10 0 1 0 20 0a10 10 0 1 0 -20 0" },
  tank: { outline: "M30 14Q30 8 38 8H82Q90 8 90 14V42Q90 50 82 50H38Q30 50 30 42Z", lines: "M50 8V4H70V8M36 30Q48 24 60 30T84 30" },
  frame: { outline: "M20 44L40 12H80L100 44H90L74 20H46L30 44Z" },
  "battery-lead": { outline: "M36 16H60V40H36ZM60 20H76V36H60Z", lines: "M76 24H84M76 32H84M36 24H12M36 32H12" },
  "flight-battery": { outline: "M22 12H98V46H22Z", lines: "M38 12V46M82 12V46M30 6H46V12M52 29H68M60 22V36" },
  controller: { outline: "M28 14H92V44H28Z", lines: "M36 14V8M46 14V8M56 14V8M84 44V50M74 44V50M40 24H80M40 34H80" },
  motor: { outline: "M30 10H90V46H30Z", lines: "M30 18H90M30 38H90M90 24H104V32H90M44 18V38M60 18V38M76 18V38" },
};
