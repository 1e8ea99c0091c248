import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { DESKTOP } from "./in-browser.ts";
import { openBrowser } from "./open-browser.ts";
import type { Cookie } from "./open-house.ts";
import { openSharedHouse } from "./open-shared-house.ts";

type SharedHouse = Awaited<ReturnType<typeof openSharedHouse>>;

/** A shared house and a browser for the tests of one file, with people by their names and roles; without a browser the tests are skipped. */
export function inSharedHouse<Name extends string>(
  roles: Readonly<Record<Name, Parameters<SharedHouse["join"]>[0]>>,
) {
  let browser: Browser | undefined;
  let house: SharedHouse | undefined;
  const cookies = new Map<Name, Cookie>();
  beforeAll(async () => {
    browser = await openBrowser().catch(() => undefined);
    if (!browser) return;
    house = await openSharedHouse(browser);
    for (const name of Object.keys(roles) as Name[]) cookies.set(name, await house.join(roles[name], name));
  });
  beforeEach((context) => context.skip(browser === undefined, "no browser"));
  afterAll(async () => {
    await browser?.close();
    await house?.stop();
  });
  const opened = (): SharedHouse => {
    if (house === undefined) throw new Error("The house is not open");
    return house;
  };
  const cookieOf = (name: Name): Cookie => {
    const cookie = cookies.get(name);
    if (cookie === undefined) throw new Error(`${name} has not joined`);
    return cookie;
  };
  return {
    house: opened,
    cookieOf,
    /** A page of somebody. */
    as: (name: Name, path: string, size: object = DESKTOP): Promise<Page> =>
      opened().open(path, cookieOf(name), size),
  };
}
