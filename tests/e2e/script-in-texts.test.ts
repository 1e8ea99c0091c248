import { describe, expect, it } from "vitest";
import { fill, houseInBrowser } from "#tests/support/house-in-browser.ts";
import { DESKTOP } from "#tests/support/in-browser.ts";
import { PASSWORD } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

const SCRIPT = `<script>window.hurt=1</script><img src=x onerror="window.hurt=2">`;

const inHouse = houseInBrowser();

describe("script in texts", () => {
  it("[C17] is shown as it was typed, on every page that shows it, and runs on none", async () => {
    const house = inHouse();
    const secret = await house.invited("owner");
    const named = { secret, signInName: "mal", name: SCRIPT, password: PASSWORD };
    const made = await house.act("accept-invitation", named);
    expect(made.status).toBe(200);
    const query = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
      ... on ExaminationChanged { examination { id } } } }`;
    const piece = {
      ...{ title: SCRIPT, note: SCRIPT, examined: 2026, invented: true, observations: [] },
      parts: [{ id: "body", label: SCRIPT }],
      attribution: { form: "form.chest", date: "1760/1775" },
    };
    const { text } = await post(house.url, { query, variables: { piece } }, house.owner);
    const { id } = JSON.parse(text).data.createExamination.examination;

    const page = await house.open("/sign-in?to=/account", DESKTOP);
    await fill(page, { "Name to sign in with": "mal", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in" }).click();
    await page.getByRole("heading", { level: 1, name: SCRIPT }).waitFor();
    for (const path of ["account", "people", "audit", "", `pieces/${id}`]) {
      await page.goto(house.url + path);
      await page.getByRole("heading", { level: 1 }).waitFor();
      await page.getByText(SCRIPT).first().waitFor();
      expect([path, await page.evaluate(() => "hurt" in window)]).toEqual([path, false]);
    }
  });
});
