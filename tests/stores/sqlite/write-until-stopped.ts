import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";

/**
 * Program for the tests of lost power and full disks: `write-until-stopped.ts <file> <run>` writes revisions and
 * examinations until it is killed or refused, and says a line on stdout after each write was acknowledged.
 */
const [path = "", run = ""] = process.argv.slice(2);
const store = await openSqliteStore(path);
if (isProblem(store)) throw new Error(store.message);
const note = "A word of a note, so that a row takes some room. ".repeat(20);

for (let n = 0; ; n++) {
  const name = `${run}-${n}`;
  const written =
    n % 2 === 0
      ? await store.commit(aCommit(adding(aTerm(`tool.${name}`, { note }))))
      : await store.createExamination(
          id(`examination.${name}`),
          { ...aPiece(), note },
          "2026-11-25T10:00:00.000Z",
        );
  if (isProblem(written)) {
    const head = (await store.newestRevision())?.number ?? 0;
    process.stdout.write(`refused ${written.code} ${head}\n`);
    break;
  }
  process.stdout.write(`wrote ${name}\n`);
}
