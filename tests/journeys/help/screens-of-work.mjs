// The screens of work on a machine, and the way to them; they come after those of the walk.
import { place } from "./ways.mjs";

export const WORK = [
  ["log", place("log", "machine", "own", "log")],
  ["work", place("work", "machine", "own", "work")],
  ["defer", place("defer", "machine", "teasel", "defer", "shroud-mounts")],
  ["due-new", place("due", "machine", "own", "due", "new")],
  ["component-new", place("component-new", "machine", "own", "component", "new")],
  ["look", place("look", "look")],
  ["label", place("label", "label")],
  ["torque-tools", place("torque-tools", "tools")],
  ["tool-form", place("tool-form", "tools", "new")],
];
