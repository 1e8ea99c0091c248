import jsQR from "jsqr";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openDevice } from "#tests/support/device.ts";
import { fill, houseInBrowser, isAccessible } from "#tests/support/house-in-browser.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { PASSWORD } from "#tests/support/open-house.ts";

const inHouse = houseInBrowser();

async function signIn(page: Page, url: string): Promise<void> {
  await page.goto(`${url}sign-in?to=/account`);
  await fill(page, { "Name to sign in with": "cy", Password: PASSWORD });
  await page.getByRole("button", { name: "Sign in" }).click();
}

const SCALE = 4;

/** What a camera would read in the picture on the page: its squares as pixels, read by jsQR. */
async function readPicture(page: Page): Promise<string | undefined> {
  const [size = 0, path = ""] = await page
    .locator("svg[role=img]")
    .evaluate(
      (svg) =>
        [
          Number(svg.getAttribute("viewBox")?.split(" ")[2]),
          svg.querySelector("path")?.getAttribute("d") ?? "",
        ] as const,
    );
  const side = size * SCALE;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let at = 0; at < SCALE * SCALE; at++) {
      const row = Number(y) * SCALE + Math.floor(at / SCALE);
      const first = (row * side + Number(x) * SCALE + (at % SCALE)) * 4;
      pixels.fill(0, first, first + 3);
    }
  return jsQR(pixels, side, side)?.data;
}

describe("a second step in browsers", () => {
  it("[C12, C13, C14] is set up by a picture, asked for after the password, and done by a recovery code too", async () => {
    const house = inHouse();
    await house.join("reader", "cy");
    const page = await house.open("/sign-in", DESKTOP);
    await signIn(page, house.url);
    await page.getByRole("heading", { level: 1, name: "cy" }).waitFor();
    const section = page.getByRole("region", { name: "A second step" });
    await section.getByLabel("Your password").fill(PASSWORD);
    await section.getByRole("button", { name: "Add a device" }).click();
    const letters = await section.getByRole("textbox", { name: "In letters" }).inputValue();
    const secret = letters.replaceAll(" ", "");
    await page.locator("svg[role=img]").waitFor();
    await isAccessible(page);
    const device = openDevice(secret);
    await section.getByLabel("Code", { exact: true }).fill("000000");
    await section.getByRole("button", { name: "Ask for it from now on" }).click();
    await section.getByText(/does not fit/).waitFor();
    await section.getByLabel("Code", { exact: true }).fill(device.code());
    await section.getByRole("button", { name: "Ask for it from now on" }).click();
    await section.getByText(/shown this once/).waitFor();
    const codes = await section.locator("li code").allTextContents();
    expect(codes.length).toBe(10);
    await isAccessible(page);

    const phone = await house.open("/sign-in", PHONE);
    await signIn(phone, house.url);
    await phone.getByRole("heading", { level: 1, name: "The second step" }).waitFor();
    await isAccessible(phone);
    await fill(phone, { Code: device.code(1) });
    await phone.getByRole("button", { name: "Sign in" }).click();
    await phone.getByRole("heading", { level: 1, name: "cy" }).waitFor();
    await phone.getByText("Recovery codes left: 10.").waitFor();
    await isAccessible(phone);
    await phone.getByRole("button", { name: "Sign out" }).click();
    await phone.getByRole("heading", { level: 1, name: "Sign in" }).waitFor();
    await signIn(phone, house.url);
    await fill(phone, { Code: codes[0] ?? "" });
    await phone.getByRole("button", { name: "Sign in" }).click();
    await phone.getByText("Recovery codes left: 9.").waitFor();
  });

  it("[C13] is told to the device by a picture that cameras read", async () => {
    const house = inHouse();
    await house.join("reader", "bo");
    const page = await house.open("/sign-in?to=/account", PHONE);
    await fill(page, { "Name to sign in with": "bo", Password: PASSWORD });
    await page.getByRole("button", { name: "Sign in" }).click();
    const section = page.getByRole("region", { name: "A second step" });
    await section.getByLabel("Your password").fill(PASSWORD);
    await section.getByRole("button", { name: "Add a device" }).click();
    await page.locator("svg[role=img]").waitFor();
    const secret = (await section.getByRole("textbox", { name: "In letters" }).inputValue()).replaceAll(
      " ",
      "",
    );
    expect(await readPicture(page)).toBe(
      `otpauth://totp/Scribeline:bo?secret=${secret}&issuer=Scribeline&algorithm=SHA1&digits=6&period=30`,
    );
  });
});
