/** A server for the tests: it asks for user and password, and takes connections with TLS and without. */
export interface FoundNeo4j {
  /** Host and port. */
  readonly host: string;
  readonly user: string;
  readonly password: string;
  readonly database: string;
  /** Where it comes from and its version, for people. */
  readonly from: string;
}

/** A server while it runs. */
export interface RunningNeo4j extends FoundNeo4j {
  stop(): Promise<void>;
}

/** What the tests are given: a server, or why there is none. */
export type ProvidedNeo4j = FoundNeo4j | { readonly missing: string };

declare module "vitest" {
  interface ProvidedContext {
    neo4j: ProvidedNeo4j;
  }
}
