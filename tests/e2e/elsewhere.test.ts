import { afterAll, beforeAll, describe, it } from "vitest";
import { fill, houseInBrowser, isAccessible } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { PASSWORD } from "#tests/support/open-house.ts";
import { CLIENT, openTestProvider } from "#tests/support/open-provider.ts";

let provider: Awaited<ReturnType<typeof openTestProvider>>;
beforeAll(async () => {
  provider = await openTestProvider(() => [`${inHouse().url}sign-in/elsewhere`]);
});
afterAll(() => provider.stop());
const inHouse = houseInBrowser(() => ({
  provider: { ...CLIENT, issuer: provider.issuer, name: "the other house" },
}));

describe("another provider in browsers", () => {
  it("[C12, C19] is linked on the page of the account, and signed in with", async () => {
    const house = inHouse();
    provider.begin();
    const phone = await house.open("/sign-in?to=/people", PHONE);
    await isAccessible(phone);
    await phone.getByRole("button", { name: "Sign in with the other house" }).click();
    await phone.getByRole("heading", { level: 1, name: "That did not sign you in" }).waitFor();
    await phone.getByText(/Nobody here is linked/).waitFor();
    await isAccessible(phone);

    const page = await house.open("/sign-in?to=/account", DESKTOP);
    await fill(page, { "Name to sign in with": "ada", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in", exact: true }).click();
    const section = page.getByRole("region", { name: "the other house" });
    await section.getByLabel("Your password").fill(PASSWORD);
    await section.getByRole("button", { name: "Link an account" }).click();
    await section.getByText(/at 127\.0\.0\.1, linked/).waitFor();
    await isAccessible(page);

    await phone.goto(`${house.url}sign-in?to=/people`);
    await phone.getByRole("button", { name: "Sign in with the other house" }).click();
    await phone.waitForURL(`${house.url}people`);
    await phone.getByRole("heading", { level: 1, name: "The people of this house" }).waitFor();
  });
});
