import { openMirrored } from "#tests/support/mirrored.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { storeSuite } from "../store-suite.ts";

onNeo4j("on a Neo4j server", ({ open }) =>
  storeSuite("neo4j, mirrored", async () => openMirrored(await open()), 5),
);
