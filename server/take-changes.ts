import { randomInt } from "node:crypto";
import { parseArgs } from "node:util";
import { createLoaders } from "./api/loaders.ts";
import { readConfig } from "./config.ts";
import type { Caller } from "./domain/people/caller.ts";
import { isProblem } from "./domain/problem.ts";
import { readJsonFile } from "./formats/read-json-file.ts";
import { readSharedChanges } from "./formats/read-sealed.ts";
import { openStore } from "./open-data.ts";
import { openSeals } from "./proof/open-seals.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { showUsage } from "./show-usage.ts";
import { takeChanges } from "./use-cases/chronicle/take-changes.ts";
import { isRefusal } from "./use-cases/refusal.ts";

const USAGE = `npm run take -- changes.json [--look]

  changes.json  what another house accepted, as it gave it (docs/formats/changes.schema.json)
  --look        only say what would be proposed
`;

/** Largest file that is read, in bytes. */
const LARGEST = 500_000_000;
/** Whoever may run programs on the machine of the house; others decide on what it proposes. */
const PROGRAM: Caller = { id: "program", role: "contributor", via: "loopback" };

const now = (): string => new Date().toISOString();
const newSuffix = (): string =>
  randomInt(36 ** 8)
    .toString(36)
    .padStart(8, "0");

/** Brings in what another house accepted, as proposals. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { look: { type: "boolean", default: false }, help: { type: "boolean" } },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0 || values.help) return showUsage(USAGE);
  const json = await readJsonFile(file, LARGEST);
  if (isProblem(json)) return refuse(json);
  const changes = readSharedChanges(json.value);
  if (isProblem(changes)) return refuse(changes);
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: values.look });
  if (isProblem(store)) return refuse(store);
  try {
    const { terms, sources } = createLoaders(store);
    const named = { terms: terms.many, sources: sources.many };
    const seals = openSeals(config.dataFolder, now);
    const ports = { store, named, seals, now, newSuffix, caller: PROGRAM };
    const taken = await takeChanges(ports, changes, values.look);
    if (isRefusal(taken)) return refuse(...taken.refused);
    const say = (text: string) => process.stdout.write(`${text}\n`);
    for (const { id, title, alike } of taken.proposed)
      say(
        `${id ?? "would propose"}: ${title}${alike.length > 0 ? ` (may be here as ${alike.join(", ")})` : ""}`,
      );
    for (const { ids, why } of taken.left) say(`left ${ids.join(", ")}: ${why}`);
    say(
      `From ${taken.house}: ${taken.proposed.length} proposals, ${taken.same} things the same here, ${taken.known} changes proposed before, ${taken.left.length} left.`,
    );
  } finally {
    await store.close();
  }
}

await runCommand(main);
