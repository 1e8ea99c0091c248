import { describe, expect, it } from "vitest";
import { fill, houseInBrowser, isAccessible } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { PASSWORD } from "#tests/support/open-house.ts";

const inHouse = houseInBrowser();

describe("an owner in a browser", () => {
  it("[C12, C21, C22] begins an account anew by a link, and erases a person", async () => {
    const house = inHouse();
    await house.join("contributor", "flo");
    const page = await house.open("/sign-in?to=/people", DESKTOP);
    await fill(page, { "Name to sign in with": "ada", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in" }).click();
    const flo = page.getByRole("listitem").filter({ hasText: "flo" });
    await flo.locator("summary").click();
    await flo.getByRole("button", { name: "Begin the account anew" }).click();
    const link = (await flo.locator("code").textContent()) ?? "";
    await isAccessible(page);

    const phone = await house.open(link.slice(house.url.length - 1), PHONE);
    await isAccessible(phone);
    await fill(phone, { Password: "short" });
    await phone.getByRole("button", { name: "Take this password" }).click();
    await phone
      .getByText(/at least 12 characters/)
      .first()
      .waitFor();
    await fill(phone, { Password: "five oak boards, two saws" });
    await phone.getByRole("button", { name: "Take this password" }).click();
    await phone.getByRole("heading", { level: 1, name: "flo" }).waitFor();

    await page.reload();
    await flo.locator("summary").click();
    await flo.getByRole("button", { name: "Erase flo for ever" }).click();
    await flo.waitFor({ state: "detached" });
    await page.goto(`${house.url}audit`);
    await page.getByText(/erase person a former member/).waitFor();
    await phone.goto(`${house.url}account`);
    await phone.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();
    expect(await phone.getByText("flo").count()).toBe(0);
  });
});
