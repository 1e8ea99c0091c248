import { randomBytes } from "node:crypto";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ACCOUNT_ACTIONS } from "#server/api/account/account-actions.ts";
import { leastOperations } from "#tests/support/least-operations.ts";
import { type Cookie, cookieOf, openHouse, PASSWORD, refusals } from "#tests/support/open-house.ts";
import { post, send } from "#tests/support/open-http.ts";

type Caller = Record<string, string>;
const SCRIPT = `<script>window.hurt=1</script>"><img src=x onerror=hurt()>'{{7*7}}\${7*7}</textarea>`;
const PIECE = {
  title: "Chest, made up for this test",
  ...{ examined: 2026, invented: true, observations: [], parts: [] },
  attribution: { form: "form.chest", date: "1760/1775" },
};
const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) {
  __typename ... on Refused { problems { code path } } ... on ExaminationChanged { examination { id } } } }`;
const mutations = leastOperations.filter(({ kind }) => kind === "mutation");

let house: Awaited<ReturnType<typeof openHouse>>;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => {
  expect(house.logged.filter(({ level }) => level === "error")).toEqual([]);
  return house.stop();
});

const deedsSince = async (sequence: number) =>
  (await house.store.writesAfter(sequence, 100)).map(({ deed }) => deed?.did);
const tokenOf = async (cookie: Cookie, role = "contributor") => {
  const made = await house.act("make-token", { label: "test", role, days: 1 }, cookie);
  return { Authorization: `Bearer ${JSON.parse(made.text).secret}` };
};

describe("what is shown in somebody's place", () => {
  const shown = async (): Promise<readonly (readonly [string, Caller])[]> => {
    const eve = await house.join("contributor", `eve${randomBytes(3).toString("hex")}`);
    const [ended, back] = [await tokenOf(eve), await tokenOf(eve)];
    const signedOut = eve;
    const { tokens } = JSON.parse((await house.act("mine", {}, eve)).text);
    for (const { id } of tokens) await house.act("take-back-token", { id }, eve);
    await house.act("sign-out", {}, eve);
    const guess = randomBytes(32).toString("base64url");
    const ownersSession = house.owner.Cookie.split("=")[1] ?? "";
    return [
      ["a token that was taken back", back],
      ["another one", ended],
      ["a guessed token", { Authorization: `Bearer scribeline_${guess}` }],
      ["a session in the place of a token", { Authorization: `Bearer ${ownersSession}` }],
      ["the hash of a session", { Cookie: `scribeline=${"a".repeat(64)}` }],
      ["a session that was ended", signedOut],
      ["a guessed session", { Cookie: `scribeline=${guess}` }],
      ["a session under the name for HTTPS", { Cookie: `__Host-scribeline=${ownersSession}` }],
    ];
  };

  it("[C17] lets nobody do anything, by API or accounts, and the audit shows that it was tried", async () => {
    const all = await shown();
    const before = await house.store.newestWrite();
    for (const [what, headers] of all) {
      for (const { document } of mutations) {
        const { status, text } = await post(house.url, { query: document }, headers);
        expect([what, status, JSON.parse(text).errors[0].extensions.code]).toEqual([
          ...[what, 401, "NOT_SIGNED_IN"],
        ]);
      }
      expect([what, refusals(await house.act("invite", { role: "owner" }, headers))]).toEqual([
        ...[what, ["NOT_SIGNED_IN"]],
      ]);
    }
    const deeds = await deedsSince(before);
    // Once a minute, however often it is tried.
    for (const did of ["refuse token", "refuse session"])
      expect(deeds.filter((one) => one === did)).toEqual([did]);
    expect(deeds).not.toContain("invite");
  });
});

describe("what another page sends with somebody's cookie", () => {
  it.each([
    { Origin: "https://evil.example" },
    { Origin: "null" },
    { Origin: "http://127.0.0.1:1" },
    { "Sec-Fetch-Site": "cross-site" },
    { "Sec-Fetch-Site": "same-site" },
  ])("[C17] does nothing: %j", async (from) => {
    const before = await house.store.newestRevision();
    for (const { document } of mutations) {
      const { status, text } = await post(house.url, { query: document }, { ...house.owner, ...from });
      expect([status, JSON.parse(text).errors[0].extensions.code]).toEqual([403, "FOREIGN_ORIGIN"]);
    }
    for (const action of Object.keys(ACCOUNT_ACTIONS))
      expect([action, (await house.act(action, {}, { ...house.owner, ...from })).status]).toEqual([
        ...[action, 403],
      ]);
    expect(await house.store.newestRevision()).toEqual(before);
    expect(await deedsSince(0)).toContain("refuse request of another page");
    expect(await house.who(house.owner)).not.toBeNull();
  });
});

describe("a role that changes", () => {
  it("[C5, C17] counts from the next request on, in a session and a token that are used meanwhile", async () => {
    const kay = await house.join("contributor", "kay");
    const script = await tokenOf(kay);
    const { id } = await house.who(kay);
    const create = async (caller: Caller) => {
      const { text } = await post(house.url, { query: CREATE, variables: { piece: PIECE } }, caller);
      const { done } = JSON.parse(text).data;
      return done.problems?.[0].code ?? done.__typename;
    };
    expect([await create(kay), await create(script)]).toEqual(["ExaminationChanged", "ExaminationChanged"]);
    const role = (expectedVersion: number, to: string) =>
      house.act("change-person", { id, expectedVersion, role: to }, house.owner);
    await role(1, "reader");
    expect([await create(kay), await create(script)]).toEqual(["NOT_ALLOWED", "NOT_ALLOWED"]);
    await role(2, "owner");
    expect(await create(kay)).toBe("ExaminationChanged");
    // A token goes no further than it was made for.
    expect(refusals(await house.act("invite", { role: "reader" }, script))).toEqual(["NOT_ALLOWED"]);
    const many = await Promise.all([
      role(3, "reader"),
      ...Array.from({ length: 20 }, () => house.act("invite", { role: "owner" }, kay)),
    ]);
    expect(many.every(({ status }) => status === 200 || status === 403)).toBe(true);
    expect(refusals(await house.act("invite", { role: "owner" }, kay))).toEqual(["NOT_ALLOWED"]);
  });
});

describe("what is too large, too deep or of another kind", () => {
  const deep = (levels: number) =>
    `{ term(id: "tool.circular-saw") ${"{ broaderTerms ".repeat(levels)}{ id }${" }".repeat(levels)} }`;
  const body = JSON.stringify({
    query: 'mutation { deleteExamination(id: "x", expectedVersion: 1) { __typename } }',
  });
  const kinds: readonly (readonly [string, string, string | Buffer])[] = [
    ["a form", "application/x-www-form-urlencoded", `query=${encodeURIComponent("{ __typename }")}`],
    [
      "an upload",
      "multipart/form-data; boundary=x",
      `--x\r\nContent-Disposition: form-data; name="operations"\r\n\r\n${body}\r\n--x--`,
    ],
    ["plain text", "text/plain", body],
    ["XML", "application/xml", `<!DOCTYPE x [<!ENTITY y SYSTEM "file:///etc/passwd">]><x>&y;</x>`],
    ["a picture", "image/png", Buffer.from("89504e470d0a1a0a", "hex")],
    ["bytes that are no text", "application/json", Buffer.from([0xff, 0xfe, 0x00])],
    ["JSON that is compressed", "application/json", gzipSync(body)],
    ["a list of operations", "application/json", `[${body},${body}]`],
    ["JSON that is cut off", "application/json", body.slice(0, -4)],
    ["a very deep value", "application/json", `${"[".repeat(50_000)}${"]".repeat(50_000)}`],
    ["much", "application/json", JSON.stringify({ query: `{ ${"a".repeat(300_000)} }` })],
  ];

  it.each(kinds)("[C17] %s is refused by API and accounts, and changes nothing", async (_, type, sent) => {
    const before = await house.store.newestWrite();
    for (const path of ["graphql", "account/invite", "account/sign-in"]) {
      const options = { method: "POST", body: sent, headers: { ...house.owner, "Content-Type": type } };
      const { status, headers } = await send(`${house.url}${path}`, options);
      expect([path, status >= 400 && status < 500, headers["content-type"]]).toEqual([
        ...[path, true, expect.stringMatching(/json/)],
      ]);
    }
    expect(await house.store.newestWrite()).toBe(before);
  });

  it("[C17] a query that goes too deep or asks for too much is refused for whoever signed in", async () => {
    for (const query of [
      deep(900),
      `{ ${Array.from({ length: 999 }, (_, i) => `a${i}: terms(first: 200) { totalCount edges { node { id } } }`).join(" ")} }`,
    ]) {
      const { status, text } = await post(house.url, { query }, house.owner);
      expect(status).toBeLessThan(500);
      expect(JSON.parse(text).errors.length).toBeGreaterThan(0);
    }
  });
});

describe("script in every text", () => {
  const text = async (answer: Promise<{ text: string; headers: Record<string, unknown> }>) => {
    const { text: sent, headers } = (await answer) as never as {
      text: string;
      headers: Record<string, string>;
    };
    expect(headers["content-type"]).toMatch(/json/);
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["content-security-policy"]).toMatch(/^default-src 'self';/);
    return sent;
  };

  it("[C17] of an account is refused or kept as it is, and answered as JSON alone", async () => {
    const secret = await house.invited("contributor");
    const named = { secret, signInName: "mallory", name: SCRIPT.slice(0, 80), password: PASSWORD };
    expect(refusals(await house.act("accept-invitation", { ...named, signInName: SCRIPT }))).toContain(
      "WRONG_FORMAT",
    );
    const mallory = cookieOf(await house.act("accept-invitation", named));
    await house.act("make-token", { label: SCRIPT.slice(0, 80), role: "reader", days: 1 }, mallory);
    expect(JSON.parse(await text(house.act("mine", {}, mallory)))).toMatchObject({
      name: SCRIPT.slice(0, 80),
      tokens: [{ label: SCRIPT.slice(0, 80) }],
    });
    for (const action of Object.keys(ACCOUNT_ACTIONS).filter((one) => one !== "sign-out"))
      for (const field of ["id", "code", "before", "password", "role", "secret", "label", "name", "state"]) {
        const answered = await house.act(action, { [field]: SCRIPT, expectedVersion: 1, days: 1 }, mallory);
        expect([action, field, answered.status < 500]).toEqual([action, field, true]);
      }
  });

  it("[C17] of the API is refused or kept as it is", async () => {
    const paths = [
      ["title"],
      ["note"],
      ["attribution", "form"],
      ["attribution", "date"],
      ["attribution", "region"],
    ];
    for (const path of paths) {
      const piece = structuredClone(PIECE) as Record<string, unknown>;
      const [last = "", ...above] = path.toReversed();
      const place = above.reduceRight((at, key) => at[key] as Record<string, unknown>, piece);
      place[last] = SCRIPT;
      const { data } = JSON.parse(
        await text(post(house.url, { query: CREATE, variables: { piece } }, house.owner)),
      );
      if (data.done.__typename === "Refused") {
        expect(data.done.problems[0].path).toEqual(expect.arrayContaining([last]));
        continue;
      }
      const { id } = data.done.examination;
      const kept = await house.store.examination(id);
      expect(kept?.piece).toMatchObject({ [last]: SCRIPT });
    }
  });

  it("[C17] in every argument of every operation is no defect", async () => {
    for (const { document } of leastOperations) {
      const query = document.replaceAll('"x"', JSON.stringify(SCRIPT));
      const { status } = await post(house.url, { query }, house.owner);
      expect([query, status < 500]).toEqual([query, true]);
    }
  });
});
