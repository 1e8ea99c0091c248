import type { Fault } from "./fault.ts";
import { killServer } from "./sqlite/kill-server.ts";

/** All of them, in the order in which they are listed. */
export const FAULTS: readonly Fault[] = [killServer];
