import { parseFeed } from "@rowanmanning/feed-parser";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openHouse } from "#tests/support/open-house.ts";
import { openHttp, send } from "#tests/support/open-http.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const HOSTILE = `<script>alert("1")</script> & ]]> \u0001\uFFFE café \uD800`;
const REVISIONS = 90;

/** The saw graph, then one of London, then many terms of nowhere, one of them with a hostile message. */
async function fill(store: Store): Promise<void> {
  const inLondon = aClaim({
    ...{ id: "claim.london", relation: "attested", subject: "feature.gesso" },
    ...{ region: "region.london", when: "1745" },
  });
  const changes = [
    sawGraph,
    adding(inLondon),
    replacing(saw, { ...saw, when: "1795" } as Claim),
    ...Array.from({ length: REVISIONS - 3 }, (_, n) => adding(aTerm(`tool.t${n}`))),
  ];
  for (const [n, change] of changes.entries()) {
    const at = new Date(Date.UTC(2026, 0, 1, n)).toISOString();
    const message = n === REVISIONS - 1 ? HOSTILE : n === REVISIONS - 2 ? " " : `change ${n + 1}`;
    answered(await store.commit(aCommit(change, { by: "test", at, message })));
  }
}

let server: Awaited<ReturnType<typeof openHttp>>;
const store = openMemoryStore();
beforeAll(async () => {
  await fill(store);
  server = await openHttp([], {}, store);
});
afterAll(() => server.stop());
const get = (path: string, headers: Record<string, string> = {}) =>
  send(`${server.url}feeds/${path}`, { headers });
const parser = new XMLParser({
  ignoreAttributes: false,
  isArray: (name) => name === "link" || name === "entry",
});
const RFC_3339 = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/;

/** What RFC 4287 asks of a document, by the sections beside. */
function expectAtom(text: string): void {
  expect(XMLValidator.validate(text)).toBe(true);
  const { feed } = parser.parse(text);
  // 4.1.1: exactly one id, title and updated; at most one self; authors on each entry where the feed has none.
  expect(feed["@_xmlns"]).toBe("http://www.w3.org/2005/Atom");
  for (const holder of [feed, ...(feed.entry ?? [])]) {
    expect(holder.id).toMatch(
      /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    );
    expect(String(holder.title)).not.toBe("");
    expect(holder.updated).toMatch(RFC_3339);
  }
  const rels = feed.link.map((link: Record<string, string>) => link["@_rel"]);
  expect(new Set(rels).size).toBe(rels.length);
  expect(rels).toContain("self");
  for (const entry of feed.entry ?? []) {
    // 4.1.2: an author, and an alternate link or content; 4.1.3.1: html as text.
    expect(String(entry.author.name)).not.toBe("");
    expect(entry.link).toMatchObject([{ "@_rel": "alternate" }]);
    expect(entry.content["@_type"]).toBe("html");
  }
  const ids = (feed.entry ?? []).map(({ id }: { id: string }) => id);
  expect(new Set(ids).size).toBe(ids.length);
}
const linksOf = (text: string): Record<string, string> =>
  Object.fromEntries(
    parser.parse(text).feed.link.map((link: Record<string, string>) => [link["@_rel"], link["@_href"]]),
  );

describe("[I12] the feeds", () => {
  it("are Atom, as a reader of feeds understands it, with hostile words as text", async () => {
    const { status, headers, text } = await get("all.atom");
    expect([status, headers["content-type"]]).toEqual([200, "application/atom+xml; charset=utf-8"]);
    expectAtom(text);
    const feed = parseFeed(text);
    expect(feed.meta.type).toBe("atom");
    expect(feed.title).toBe("Evidence accepted");
    const [newest, unnamed] = feed.items;
    expect(newest?.title).toContain('<script>alert("1")</script> & ]]>');
    expect(newest?.title).toContain("café");
    expect(newest?.authors.map(({ name }) => name)).toEqual(["test"]);
    expect(newest?.url).toBe(`${server.url}house/history?from=${REVISIONS - 1}&to=${REVISIONS}`);
    expect(newest?.content).toMatch(/<li>New: t86<\/li>/);
    expect(unnamed?.title).toBe(`Revision ${REVISIONS - 1}`);
    expect(feed.updated?.toISOString()).toBe((await store.newestRevision())?.at);
  });

  it("of a region tell what is of it or within it, with ids that stay and are of that feed alone", async () => {
    const england = (await get("region.england.atom")).text;
    expectAtom(england);
    const feed = parseFeed(england);
    expect(feed.title).toBe("Evidence accepted: England");
    expect(feed.items.map(({ title }) => title)).toEqual(["change 3", "change 2", "change 1"]);
    expect(feed.items[0]?.content).toContain(
      "<li>Changed (date): Circular saw: introduced in England, 1795.",
    );
    expect(feed.items[2]?.content).not.toContain("gilded");
    const london = parseFeed((await get("region.london.atom")).text);
    expect(london.items.map(({ title }) => title)).toEqual(["change 2", "change 1"]);
    expect(london.items[0]?.id).not.toBe(feed.items[1]?.id);
    expect(parseFeed((await get("region.england.atom")).text).items.map(({ id }) => id)).toEqual(
      feed.items.map(({ id }) => id),
    );
  });

  it("[I13] come in pages that are always of the same revisions, each once, from the newest to the first", async () => {
    let address: string | undefined = `${server.url}feeds/all.atom`;
    const titles: string[] = [];
    const addresses: string[] = [];
    while (address !== undefined) {
      const { text } = await send(address);
      expectAtom(text);
      const links = linksOf(text);
      expect([links["self"], links["first"]]).toEqual([address, `${server.url}feeds/all.atom`]);
      expect(links["last"]).toBe(`${server.url}feeds/all.atom?page=0`);
      // Who goes back by them misses nothing: the next newer page, even where a document before had it too.
      const page = Number(new URL(address).searchParams.get("page") ?? 4);
      expect(links["previous"]?.replace(/.*atom/, "")).toBe(
        page === 4 ? undefined : page === 3 ? "" : `?page=${page + 1}`,
      );
      titles.push(...parseFeed(text).items.map(({ url }) => url ?? ""));
      addresses.push(address);
      address = links["next"];
    }
    expect(titles).toEqual(
      Array.from({ length: REVISIONS }, (_, n) => {
        const number = REVISIONS - n;
        return `${server.url}house/history?from=${number - 1}&to=${number}`;
      }),
    );
    expect(addresses.map((each) => new URL(each).search)).toEqual(["", "?page=2", "?page=1", "?page=0"]);
  });

  it("[I13] are not sent again to who has them", async () => {
    const { headers } = await get("all.atom");
    const [tag, changed] = [String(headers["etag"]), String(headers["last-modified"])];
    expect((await get("all.atom", { "If-None-Match": tag })).status).toBe(304);
    expect((await get("all.atom", { "If-None-Match": `"other", ${tag}` })).status).toBe(304);
    expect((await get("all.atom", { "If-Modified-Since": changed })).status).toBe(304);
    expect((await get("all.atom", { "If-None-Match": '"other"', "If-Modified-Since": changed })).status).toBe(
      200,
    );
    expect((await get("all.atom", { "If-Modified-Since": "Thu, 01 Jan 2026 00:00:00 GMT" })).status).toBe(
      200,
    );
    expect((await get("region.england.atom", { "If-None-Match": tag })).status).toBe(200);
  });

  it("are only of regions that there are, and are only read", async () => {
    for (const path of [
      "region.none.atom",
      "tool.circular-saw.atom",
      "all",
      "all.atom?page=-1",
      "..%2fx.atom",
    ])
      expect([path, (await get(path)).status]).toEqual([path, 404]);
    expect((await get("all.atom?page=999")).status).toBe(200);
    expect((await send(`${server.url}feeds/all.atom`, { method: "POST" })).status).toBe(405);
    expect((await get("all.atom", { Origin: "https://elsewhere.example" })).status).toBe(403);
  });
});

it("[I14] a feed is read with a session or a token where people sign in, and by nobody else", async () => {
  const house = await openHouse();
  try {
    const feed = `${house.url}feeds/all.atom`;
    const nobody = await send(feed);
    expect([nobody.status, nobody.headers["www-authenticate"]]).toEqual([401, 'Bearer realm="Scribeline"']);
    expect((await send(feed, { headers: house.owner })).status).toBe(200);
    const asked = { label: "feeds", role: "reader", days: 30 };
    const { secret } = JSON.parse((await house.act("make-token", asked, house.owner)).text);
    expect((await send(feed, { headers: { Authorization: `Bearer ${secret}` } })).status).toBe(200);
  } finally {
    await house.stop();
  }
});
