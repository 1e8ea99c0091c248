import { resolve } from "node:path";
import { type Problem, problem } from "./domain/problem.ts";
import type { StorePlace } from "./open-data.ts";
import { ADDRESS_FORM, readNeo4jAddress } from "./stores/neo4j/neo4j-address.ts";

/** Reads the name of a place where a store can lie: the address of a Neo4j server, else a folder. */
export function readPlace(text: string): StorePlace | Problem {
  const neo4j = readNeo4jAddress(text);
  if (neo4j !== undefined) return { dataFolder: "", neo4j };
  if (!/^[a-z0-9+]+:\/\//i.test(text)) return { dataFolder: resolve(text) };
  return problem(
    "WRONG_FORMAT",
    `What looks like an address is none of a store; it has to be like ${ADDRESS_FORM} (or bolt://, and +s for TLS), or the path of a data folder.`,
  );
}
