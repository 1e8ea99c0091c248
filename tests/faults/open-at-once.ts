import { isProblem, type Problem } from "#server/domain/problem.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { type Ended, runNode } from "#tests/support/run-node.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "./counts.ts";

const SCRIPT = "tests/faults/open-and-seed.ts";

interface Said {
  readonly seeded: boolean;
  readonly hash: string;
}

/**
 * Two programs open one store at the same moment, which is new or of an earlier version; one may be killed, and then a third
 * opens it. They have to agree, one at most has seeded it, and what stands is whole.
 */
export async function openAtOnce({
  random,
  settings,
  open,
  isNew,
}: {
  readonly random: RandomSource;
  readonly settings: Readonly<Record<string, string>>;
  readonly open: () => Promise<Store | Problem>;
  readonly isNew: boolean;
}): Promise<Counts> {
  const programs = [runNode([SCRIPT], settings), runNode([SCRIPT], settings)];
  const isKilling = random.chance(0.3);
  if (isKilling) {
    await new Promise((resolve) => setTimeout(resolve, 300 + random.below(2_500)));
    programs[random.below(2)]?.child.kill("SIGKILL");
  }
  const ended = await Promise.all(programs.map((program) => program.ended));
  if (isKilling) ended.push(await runNode([SCRIPT], settings).ended);
  const findings: string[] = [];
  const said = ended.flatMap((each): readonly Said[] => {
    if (each.exit === 0) return [JSON.parse(each.out) as Said];
    if (!isKilling || each.exit !== null)
      findings.push(`a program ended with ${each.exit}: ${lastWords(each)}`);
    return [];
  });
  if (new Set(said.map(({ hash }) => hash)).size !== 1)
    findings.push("the programs found different revisions");
  const seeders = said.filter(({ seeded }) => seeded).length;
  if (seeders > 1 || (isNew && !isKilling && seeders === 0)) findings.push(`${seeders} programs seeded it`);
  const store = await open();
  if (isProblem(store)) findings.push(`does not open: ${store.message}`);
  else {
    const verified = await store.verify();
    if (isProblem(verified)) findings.push(`does not verify: ${verified.message}`);
    else if (verified.head !== said[0]?.hash)
      findings.push("another revision stands than the programs found");
    if (isNew && (await store.newestRevision())?.number !== 1) findings.push("it was seeded more than once");
    await store.close();
  }
  const also = { [isNew ? "new" : "of an earlier version"]: 1, "with one killed": Number(isKilling) };
  return addCounts(NOTHING_COUNTED, { faults: 1, findings, also });
}

const lastWords = ({ err, out }: Ended): string => `${err}${out}`.slice(-400);
