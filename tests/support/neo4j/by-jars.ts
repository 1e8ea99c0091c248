import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type KillableNeo4j, type Measured, startServer } from "./start-server.ts";

const CACHE = fileURLToPath(new URL("../../../.cache/neo4j", import.meta.url));

/** The long-term line; NEO4J_TEST_VERSION names another, which may want a newer Java (NEO4J_TEST_JAVA, a program). */
const VERSION = "5.26.30";

/** A server from its jars, on the Java of this machine, if there is one; the jars are fetched once, by Maven. */
export async function openFromJars(
  env: Readonly<Record<string, string>> = {},
  measured?: Measured,
): Promise<KillableNeo4j | undefined> {
  const version = process.env["NEO4J_TEST_VERSION"] || VERSION;
  const java = process.env["NEO4J_TEST_JAVA"] || "java";
  if (!isThere(java, "-version") || !isThere("openssl", "version")) return undefined;
  const jars = join(CACHE, version, "lib");
  if (!existsSync(jars)) {
    if (!isThere("mvn", "--version")) return undefined;
    fetchJars(version, jars);
  }
  return startServer({ java, jars, version }, env, measured);
}

const isThere = (program: string, flag: string): boolean => spawnSync(program, [flag]).status === 0;

function fetchJars(version: string, jars: string): void {
  const folder = join(CACHE, version);
  const part = join(folder, "part");
  rmSync(part, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "pom.xml"), pomOf(version));
  const fetched = spawnSync(
    "mvn",
    [
      "-q",
      "-B",
      "-f",
      folder,
      "dependency:copy-dependencies",
      `-DoutputDirectory=${part}`,
      "-DincludeScope=runtime",
    ],
    { encoding: "utf8", timeout: 300_000 },
  );
  if (fetched.status !== 0)
    throw new Error(`Maven could not fetch Neo4j ${version}: ${fetched.stdout}${fetched.stderr}`);
  renameSync(part, jars);
}

function pomOf(version: string): string {
  const dependency = (group: string, artifact: string): string =>
    `<dependency><groupId>${group}</groupId><artifactId>${artifact}</artifactId><version>${version}</version></dependency>`;
  return `<project xmlns="http://maven.apache.org/POM/4.0.0"><modelVersion>4.0.0</modelVersion>
  <groupId>scribeline</groupId><artifactId>neo4j-for-tests</artifactId><version>1</version>
  <dependencies>${dependency("org.neo4j", "neo4j")}${dependency("org.neo4j.app", "neo4j-server")}</dependencies>
</project>
`;
}
