import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { KEPT_REPORT_BODY_CARD } from "./domain/chronicle/kept-report.ts";
import { CHECKPOINT_CARD } from "./domain/proof/checkpoint.ts";
import type { Store } from "./ports/store.ts";
import { HOUSE_KEY_FILE } from "./proof/open-seals.ts";

/** Says after a backup what to keep beside it, which it does not hold; nothing where the house has not signed yet. */
export function sayKeyBeside(dataFolder: string): string | undefined {
  const file = join(dataFolder, HOUSE_KEY_FILE);
  if (!existsSync(file)) return undefined;
  return `The key that the house signs with is not in it: keep a copy of ${file} apart from the backups, where nobody else can read it, and a new one whenever the key was renewed.`;
}

/** Says which key is lacking in a data folder, where a house signed what stands in the store and its key does not lie there. */
export async function sayLackingKey(
  store: Pick<Store, "listCards">,
  dataFolder: string,
): Promise<string | undefined> {
  const houses = await Promise.all(
    [CHECKPOINT_CARD, KEPT_REPORT_BODY_CARD].map(async (kind) => {
      const { rows } = await store.listCards({ kind }, { first: 1 }, "down");
      return (rows[0]?.body as { readonly house?: string } | undefined)?.house;
    }),
  );
  const house = houses.find((each) => each !== undefined);
  if (house === undefined || house === houseIn(dataFolder)) return undefined;
  return `It was signed by the house ${house}, whose key does not lie in ${dataFolder}: bring your copy of ${HOUSE_KEY_FILE} there before a server starts, or the house signs under another name from now on.`;
}

function houseIn(dataFolder: string): string | undefined {
  const file = join(dataFolder, HOUSE_KEY_FILE);
  if (!existsSync(file)) return undefined;
  return (JSON.parse(readFileSync(file, "utf8")) as { readonly house?: string }).house;
}
