import type { Page } from "playwright-core";
import { DESKTOP } from "./in-browser.ts";
import type { Cookie } from "./open-house.ts";
import { openSharedHouse } from "./open-shared-house.ts";
import { withBrowser } from "./with-browser.ts";

type SharedHouse = Awaited<ReturnType<typeof openSharedHouse>>;

/** A shared house and a browser for the tests of one file, with people by their names and roles. */
export function inSharedHouse<Name extends string>(
  roles: Readonly<Record<Name, Parameters<SharedHouse["join"]>[0]>>,
) {
  const cookies = new Map<Name, Cookie>();
  const house = withBrowser(async (browser) => {
    const opened = await openSharedHouse(browser);
    for (const name of Object.keys(roles) as Name[]) cookies.set(name, await opened.join(roles[name], name));
    return opened;
  });
  const cookieOf = (name: Name): Cookie => {
    const cookie = cookies.get(name);
    if (cookie === undefined) throw new Error(`${name} has not joined`);
    return cookie;
  };
  return {
    house,
    cookieOf,
    /** A page of somebody. */
    as: (name: Name, path: string, size: object = DESKTOP): Promise<Page> =>
      house().open(path, cookieOf(name), size),
  };
}
