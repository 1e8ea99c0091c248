import type { Fault } from "./fault.ts";
import { clockSetOnNeo4j } from "./neo4j/clock-set.ts";
import { cutAnywhere } from "./neo4j/cut-anywhere.ts";
import { killNeo4j } from "./neo4j/kill-neo4j.ts";
import { killOneOfTwoOnNeo4j } from "./neo4j/kill-one-of-two.ts";
import { openAtOnceOnNeo4j } from "./neo4j/open-at-once.ts";
import { slowNeo4j } from "./neo4j/slow-neo4j.ts";
import { clockSetOnSqlite } from "./sqlite/clock-set.ts";
import { corruptPage } from "./sqlite/corrupt-page.ts";
import { diskFull } from "./sqlite/disk-full.ts";
import { killOneOfTwoOnSqlite } from "./sqlite/kill-one-of-two.ts";
import { killServer } from "./sqlite/kill-server.ts";
import { lockedFile } from "./sqlite/locked-file.ts";
import { openAtOnceOnSqlite } from "./sqlite/open-at-once.ts";
import { tornLog } from "./sqlite/torn-log.ts";

/** All of them, in the order in which they are listed. */
export const FAULTS: readonly Fault[] = [
  killServer,
  killOneOfTwoOnSqlite,
  tornLog,
  corruptPage,
  diskFull,
  lockedFile,
  clockSetOnSqlite,
  openAtOnceOnSqlite,
  killNeo4j,
  killOneOfTwoOnNeo4j,
  cutAnywhere,
  slowNeo4j,
  clockSetOnNeo4j,
  openAtOnceOnNeo4j,
];
