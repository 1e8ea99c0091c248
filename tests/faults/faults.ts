import type { Fault } from "./fault.ts";
import { corruptPage } from "./sqlite/corrupt-page.ts";
import { killServer } from "./sqlite/kill-server.ts";
import { tornLog } from "./sqlite/torn-log.ts";

/** All of them, in the order in which they are listed. */
export const FAULTS: readonly Fault[] = [killServer, tornLog, corruptPage];
