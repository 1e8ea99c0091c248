import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fill, houseInBrowser, isAccessible, openPage } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { PASSWORD, refusals } from "#tests/support/open-house.ts";

const inHouse = houseInBrowser(() => ({ secondStepFrom: "owner" }));

/** Gives the browser of a page a device that holds keys and proves who holds it, as Chromium's protocol for developers has one. */
async function addDevice(page: Page): Promise<void> {
  const protocol = await page.context().newCDPSession(page);
  await protocol.send("WebAuthn.enable");
  await protocol.send("WebAuthn.addVirtualAuthenticator", {
    options: {
      ...{ protocol: "ctap2", transport: "internal", hasResidentKey: true, hasUserVerification: true },
      ...{ isUserVerified: true, automaticPresenceSimulation: true },
    },
  });
}

/** What the page sends to an action the next time. */
const sentTo = async (page: Page, action: string): Promise<Record<string, string>> =>
  (await page.waitForRequest((request) => request.url().endsWith(`/account/${action}`))).postDataJSON();

describe("passkeys in browsers", () => {
  it("[C12, C24] are made on the page of the account and sign in by themselves, once for each way", async () => {
    const { act, browser, url } = inHouse();
    const base = url.replace("127.0.0.1", "localhost");
    const page = await openPage(browser, `${base}sign-in?to=/account`, PHONE);
    await addDevice(page);
    await isAccessible(page);
    await fill(page, { "Name to sign in with": "ada", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in", exact: true }).click();
    await page.getByText(/your role asks for a second step/).waitFor();
    const section = page.getByRole("region", { name: "Passkeys" });
    await section.getByLabel("Your password").fill("not it at all");
    await section.getByLabel("What to call the key").fill("the tablet");
    await section.getByRole("button", { name: "Make a passkey" }).click();
    await section.getByText(/not the password you have now/).waitFor();
    await section.getByLabel("Your password").fill(PASSWORD);
    const making = sentTo(page, "finish-passkey");
    await section.getByRole("button", { name: "Make a passkey" }).click();
    await section.getByText(/the tablet, made/).waitFor();
    await isAccessible(page);
    expect(await page.getByText(/your role asks for a second step/).count()).toBe(0);

    await page.getByRole("button", { name: "Sign out" }).click();
    await page.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();
    const signing = sentTo(page, "finish-passkey-sign-in");
    await page.getByRole("button", { name: "Sign in with a passkey" }).click();
    await page.waitForURL(base);
    const came = await signing;
    await page.goto(`${base}people`);
    await page.getByRole("button", { name: "Make a link" }).waitFor();

    // What was sent once serves no more, and what is changed never does.
    const again = (changed: object) => act("finish-passkey-sign-in", { ...came, ...changed });
    const response = JSON.parse(came["response"] ?? "");
    const { signature, authenticatorData } = response.response;
    const changedTo = (what: object) => ({
      response: JSON.stringify({ ...response, response: { ...response.response, ...what } }),
    });
    const other = JSON.parse((await act("begin-passkey-sign-in", { origin: base.slice(0, -1) })).text);
    const elsewhere = JSON.parse((await act("begin-passkey-sign-in", { origin: url.slice(0, -1) })).text);
    for (const changed of [
      {},
      { way: other.way },
      { way: elsewhere.way },
      { way: (await making)["way"] },
      { way: "x" },
      { response: "x" },
      { response: "null" },
      { response: JSON.stringify({ ...response, id: "unknown" }) },
      { ...changedTo({ signature: `A${signature.slice(1, -8)}AAAAAAAA` }), way: other.way },
      { ...changedTo({ authenticatorData: `A${authenticatorData.slice(1)}` }), way: other.way },
    ]) {
      const refused = await again(changed);
      expect([changed, refusals(refused), refused.headers["set-cookie"]]).toEqual([
        ...[changed, ["SIGN_IN_REFUSED"], undefined],
      ]);
    }
    expect(refusals(await act("begin-passkey-sign-in", { origin: "https://evil.example" }))).toEqual([
      "WRONG_FORMAT",
    ]);
    // Nor is a key kept a second time, or by nobody.
    expect(refusals(await act("finish-passkey", await making))).toEqual(["NOT_SIGNED_IN"]);

    await page.goto(`${base}account`);
    await section.getByLabel("Your password").fill(PASSWORD);
    await section.getByRole("button", { name: "Take away the tablet" }).click();
    await section.getByText(/the tablet, made/).waitFor({ state: "detached" });
    await page.getByRole("button", { name: "Sign out" }).click();
    await page.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();
    await page.getByRole("button", { name: "Sign in with a passkey" }).click();
    await page.getByText(/This key is not known here/).waitFor();
  });

  it("[C24] are not offered at an address in digits, where no browser has any", async () => {
    const house = inHouse();
    const page = await house.open("/sign-in", DESKTOP);
    await page.getByRole("button", { name: "Sign in", exact: true }).waitFor();
    expect(await page.getByRole("button", { name: "Sign in with a passkey" }).count()).toBe(0);
  });
});
