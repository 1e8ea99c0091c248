import { id } from "../../domain/ids.ts";
import { isProblem } from "../../domain/problem.ts";
import { readCheckpoint, readKeptReport } from "../../formats/read-sealed.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Results } from "../../ports/results.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../../use-cases/acting.ts";
import type { FindNamed } from "../../use-cases/ask/say-edit.ts";
import { compareRevisions } from "../../use-cases/chronicle/compare-revisions.ts";
import { examineAgain } from "../../use-cases/chronicle/examine-again.ts";
import { judgeCheckpoint } from "../../use-cases/chronicle/judge-checkpoint.ts";
import { keepReport } from "../../use-cases/chronicle/keep-report.ts";
import { listCheckpoints } from "../../use-cases/chronicle/list-checkpoints.ts";
import { listHistory } from "../../use-cases/chronicle/list-history.ts";
import { findKeptReport, listKeptReports } from "../../use-cases/chronicle/list-kept-reports.ts";
import { renewHouseKey } from "../../use-cases/chronicle/renew-house-key.ts";
import { signCheckpoint } from "../../use-cases/chronicle/sign-checkpoint.ts";
import { isRefusal } from "../../use-cases/refusal.ts";
import type { Input } from "../account/read-input.ts";

/** What the actions stand on. */
export interface ChroniclePorts extends Acting {
  readonly store: Store;
  readonly seals: Seals;
  readonly results: Results;
  readonly standings: Standings;
  readonly newSuffix: NewSuffix;
}
/** With what is named read in few calls of the store. */
export type ReadingPorts = ChroniclePorts & { readonly named: FindNamed };
type Act = (ports: ReadingPorts, input: Input) => Promise<object>;

/** All that can be asked of the history of the house and of its proof, by the last word of the address. */
export const CHRONICLE_ACTIONS: Readonly<Record<string, Act>> = {
  checkpoints: (ports, input) => listCheckpoints(ports, input.optional("after")),
  "sign-checkpoint": (ports) => signCheckpoint(ports),
  "renew-key": (ports) => renewHouseKey(ports),
  "check-checkpoint": async (ports, input) => {
    const checkpoint = readCheckpoint(input.value("checkpoint"));
    if (isProblem(checkpoint)) return { refused: [checkpoint] };
    return { ...(await judgeCheckpoint(ports, checkpoint)), checkpoint };
  },
  history: (ports, input) => listHistory(ports, input.optional("after")),
  difference: (ports, input) => {
    const asked = { from: input.number("from"), to: input.number("to") };
    return compareRevisions(ports, { ...asked, skip: input.has("skip") ? input.number("skip") : 0 });
  },
  "sign-report": (ports, input) => keepReport(ports, id(input.text("examination"))),
  "signed-reports": (ports, input) => listKeptReports(ports, id(input.text("examination"))),
  "signed-report": (ports, input) => findKeptReport(ports, input.text("id")),
  "examine-again": async (ports, input) => {
    const kept = input.has("report")
      ? readKeptReport(input.value("report"))
      : await findKeptReport(ports, input.text("id"));
    if (isProblem(kept)) return { refused: [kept] };
    return isRefusal(kept) ? kept : examineAgain(ports, kept);
  },
};
