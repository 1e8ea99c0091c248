import { serverAudits } from "graphql-http";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openHttp } from "#tests/support/open-http.ts";

/**
 * The audits of the GraphQL over HTTP specification, as published with graphql-http: every one of them, also those that
 * a server only SHOULD or MAY pass. They say that they come from no web page, as scripts do.
 */
describe("[A15] GraphQL over HTTP", () => {
  let server: Awaited<ReturnType<typeof openHttp>>;
  beforeAll(async () => {
    server = await openHttp([]);
  });
  afterAll(() => server.stop());

  const audits = serverAudits({
    url: () => `${server.url}graphql`,
    fetchFn: (url: string, init: RequestInit = {}) => {
      const headers = new Headers(init.headers);
      headers.set("Apollo-Require-Preflight", "1");
      return fetch(url, { ...init, headers });
    },
  });

  it("has as many audits as that version of the suite", () => {
    expect(audits).toHaveLength(61);
  });

  it.each(audits.map((audit) => [`${audit.id} ${audit.name}`, audit] as const))("%s", async (_, audit) => {
    const { status, ...rest } = await audit.fn();
    expect(status, "reason" in rest ? rest.reason : "").toBe("ok");
  });
});
