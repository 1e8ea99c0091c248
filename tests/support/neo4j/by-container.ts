import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { RunningNeo4j } from "./found-neo4j.ts";
import { makeCertificate } from "./make-certificate.ts";
import { removeFolder, temporaryFolder } from "./temporary-folder.ts";

const IMAGE = "neo4j:5.26-community";
const CERTIFICATES = "/var/lib/neo4j/certificates/bolt";

/** A server in a container, if a container engine answers. */
export async function openInContainer(): Promise<RunningNeo4j | undefined> {
  const { getContainerRuntimeClient } = await import("testcontainers");
  const engine = await getContainerRuntimeClient().catch(() => undefined);
  if (engine === undefined) return undefined;
  const { Neo4jContainer } = await import("@testcontainers/neo4j");
  const folder = temporaryFolder();
  makeCertificate(folder);
  const container = await new Neo4jContainer(IMAGE)
    .withPassword("a-password-for-tests")
    .withCopyContentToContainer(
      ["private.key", "public.crt"].map((file) => ({
        content: readFileSync(join(folder, file), "utf8"),
        target: `${CERTIFICATES}/${file}`,
      })),
    )
    .withEnvironment({
      NEO4J_server_bolt_tls__level: "OPTIONAL",
      NEO4J_dbms_ssl_policy_bolt_enabled: "true",
      NEO4J_dbms_ssl_policy_bolt_base__directory: CERTIFICATES,
      NEO4J_dbms_ssl_policy_bolt_client__auth: "NONE",
      NEO4J_dbms_usage__report_enabled: "false",
    })
    .start();
  return {
    host: new URL(container.getBoltUri()).host,
    user: container.getUsername(),
    password: container.getPassword(),
    database: "neo4j",
    from: `a container of ${IMAGE}`,
    stop: async () => {
      await container.stop();
      removeFolder(folder);
    },
  };
}
