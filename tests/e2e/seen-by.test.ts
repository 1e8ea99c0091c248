import { expect, it } from "vitest";
import { isAccessible } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { inSharedHouse } from "#tests/support/in-shared-house.ts";
import { post } from "#tests/support/open-http.ts";

const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const PIECE = {
  ...{ title: "Chest of the test", invented: true, examined: 2026 },
  attribution: { date: "1760/1775", region: "region.england", form: "form.chest" },
  ...{ parts: [{ id: "carcase", label: "Carcase" }], observations: [] },
};

const { cookieOf, house } = inSharedHouse({ rita: "contributor", cleo: "contributor" });

it.each([
  ["a desktop", DESKTOP],
  ["a phone", PHONE],
])("[C25] a piece is shown to one other, by keyboard, on %s", async (_, size) => {
  const { text } = await post(house().url, { query: CREATE, variables: { piece: PIECE } }, cookieOf("rita"));
  const path = `/pieces/${JSON.parse(text).data.done.examination.id}`;
  const page = await house().open(path, cookieOf("rita"), size);
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

  const other = await house().open(path, cookieOf("cleo"), size);
  await other.getByText("Seen by: rita, cleo").waitFor();
  const owner = await house().open(path, house().owner, size);
  expect(await owner.getByRole("heading", { level: 1 }).textContent()).toBe("There is no such examination");
  for (const each of [page, other, owner]) await each.context().close();
});
