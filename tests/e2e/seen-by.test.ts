import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { isAccessible } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { openBrowser } from "#tests/support/open-browser.ts";
import type { Cookie } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";
import { openSharedHouse } from "#tests/support/open-shared-house.ts";

const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const PIECE = {
  ...{ title: "Chest of the test", invented: true, examined: 2026 },
  attribution: { date: "1760/1775", region: "region.england", form: "form.chest" },
  ...{ parts: [{ id: "carcase", label: "Carcase" }], observations: [] },
};

let browser: Browser | undefined;
let house: Awaited<ReturnType<typeof openSharedHouse>>;
let [rita, cleo]: readonly Cookie[] = [];
beforeAll(async () => {
  browser = await openBrowser().catch(() => undefined);
  if (!browser) return;
  house = await openSharedHouse(browser);
  rita = await house.join("contributor", "rita");
  cleo = await house.join("contributor", "cleo");
});
beforeEach((context) => context.skip(browser === undefined, "no browser"));
afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

it.each([
  ["a desktop", DESKTOP],
  ["a phone", PHONE],
])("[C25] a piece is shown to one other, by keyboard, on %s", async (_, size) => {
  const { text } = await post(house.url, { query: CREATE, variables: { piece: PIECE } }, rita as Cookie);
  const path = `/pieces/${JSON.parse(text).data.done.examination.id}`;
  const page = await house.open(path, rita as Cookie, size);
  const line = page.getByRole("button", { name: "Seen by: the whole house" });
  await line.focus();
  await page.keyboard.press("Enter");
  const one = page.getByRole("radio", { name: "The whole house" });
  await one.focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.getByRole("checkbox", { name: "cleo" }).focus();
  await page.keyboard.press("Space");
  await isAccessible(page);
  await page.getByRole("button", { name: "Let it be seen so" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Seen by: me and cleo" }).waitFor();

  const other = await house.open(path, cleo as Cookie, size);
  await other.getByText("Seen by: rita, cleo").waitFor();
  const owner = await house.open(path, house.owner, size);
  expect(await owner.getByRole("heading", { level: 1 }).textContent()).toBe("There is no such examination");
  for (const each of [page, other, owner]) await each.context().close();
});
