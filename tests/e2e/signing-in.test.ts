import { describe, expect, it } from "vitest";
import { builtPages, fill, isAccessible, openPage } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { openHttp } from "#tests/support/open-http.ts";
import { PATIENT } from "#tests/support/open-scribeline.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { withBrowser } from "#tests/support/with-browser.ts";

const PASSWORD = "four oak boards, one saw";

const inHouse = withBrowser(async (browser) => ({
  ...(await openHttp([sawGraph], { accounts: true, webFolder: builtPages(), deadline: PATIENT })),
  browser,
}));
const open = (path: string, size: object) =>
  openPage(inHouse().browser, new URL(path, inHouse().url).href, size);

describe("people in browsers", () => {
  it("[C12] set up a house, invite somebody, who signs out and in again; the owner reads the audit", async () => {
    const house = inHouse();
    const owner = await open("/set-up", DESKTOP);
    await isAccessible(owner);
    const secret = String(house.logged.find(({ event }) => event === "first owner")?.["secret"]);
    const about = { "Your name": "Ada", "Name to sign in with": "ada" };
    await fill(owner, { "Secret from the log": secret, ...about, Password: "short" });
    await owner.getByRole("button", { name: "Make the account" }).click();
    await owner.getByText(/at least 12 characters; this one has 5/).waitFor();
    await fill(owner, { Password: PASSWORD });
    await owner.getByRole("button", { name: "Make the account" }).click();
    await owner.waitForURL(house.url);

    await owner.goto(`${house.url}people`);
    await owner.getByRole("button", { name: "Make a link" }).click();
    const link = (await owner.locator("code").textContent()) ?? "";
    await isAccessible(owner);

    const guest = await open(link.slice(house.url.length - 1), PHONE);
    await isAccessible(guest);
    await fill(guest, { "Your name": "Bea", "Name to sign in with": "bea", Password: PASSWORD });
    await guest.getByRole("button", { name: "Make the account" }).click();
    await guest.waitForURL(house.url);
    await guest.goto(`${house.url}account`);
    await guest.getByRole("heading", { level: 1, name: "Bea" }).waitFor();
    await isAccessible(guest);
    await fill(guest, { "What it is for": "the scanner" });
    await guest.getByRole("button", { name: "Make a token" }).click();
    await guest.getByText(/^scribeline_[\w-]{43}$/).waitFor();
    await guest.getByRole("button", { name: "Sign out" }).click();
    await guest.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();

    await guest.goto(`${house.url}evidence`);
    await guest.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();
    expect(guest.url()).toBe(`${house.url}sign-in?to=%2Fevidence`);
    await isAccessible(guest);
    await fill(guest, { "Name to sign in with": "bea", Password: "not the password" });
    await guest.getByRole("button", { name: "Sign in" }).click();
    await guest.getByText(/do not belong together/).waitFor();
    await fill(guest, { Password: PASSWORD });
    await guest.getByRole("button", { name: "Sign in" }).click();
    await guest.waitForURL(`${house.url}evidence`);

    await owner.goto(`${house.url}audit`);
    await owner.getByText("Bea: sign in").waitFor();
    await owner.getByText("program: refuse sign-in Bea").waitFor();
    await isAccessible(owner);
  });

  it("[C12] lead nowhere else after signing in", async () => {
    const page = await open("/sign-in?to=//evil.example/x", DESKTOP);
    await fill(page, { "Name to sign in with": "ada", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in" }).click();
    await page.waitForURL(inHouse().url);
  });
});
