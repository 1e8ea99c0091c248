import type { Fault } from "./fault.ts";
import { cutAnywhere } from "./neo4j/cut-anywhere.ts";
import { killNeo4j } from "./neo4j/kill-neo4j.ts";
import { killOneOfTwoOnNeo4j } from "./neo4j/kill-one-of-two.ts";
import { corruptPage } from "./sqlite/corrupt-page.ts";
import { diskFull } from "./sqlite/disk-full.ts";
import { killServer } from "./sqlite/kill-server.ts";
import { tornLog } from "./sqlite/torn-log.ts";

/** All of them, in the order in which they are listed. */
export const FAULTS: readonly Fault[] = [
  killServer,
  diskFull,
  tornLog,
  corruptPage,
  cutAnywhere,
  killNeo4j,
  killOneOfTwoOnNeo4j,
];
