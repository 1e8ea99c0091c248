import { id } from "../../domain/ids.ts";
import { isProblem } from "../../domain/problem.ts";
import { readCheckpoint, readKeptReport, readSharedChanges } from "../../formats/read-sealed.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Results } from "../../ports/results.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../../use-cases/acting.ts";
import type { FindNamed } from "../../use-cases/ask/say-edit.ts";
import { compareRevisions } from "../../use-cases/chronicle/compare-revisions.ts";
import { examineAgain } from "../../use-cases/chronicle/examine-again.ts";
import { findFollowing, followThing, unfollowThing } from "../../use-cases/chronicle/follow-thing.ts";
import { giveChanges } from "../../use-cases/chronicle/give-changes.ts";
import { judgeCheckpoint } from "../../use-cases/chronicle/judge-checkpoint.ts";
import { keepReport } from "../../use-cases/chronicle/keep-report.ts";
import { listCheckpoints } from "../../use-cases/chronicle/list-checkpoints.ts";
import { listHistory } from "../../use-cases/chronicle/list-history.ts";
import { findKeptReport, listKeptReports } from "../../use-cases/chronicle/list-kept-reports.ts";
import { markDigestSeen, readDigest } from "../../use-cases/chronicle/read-digest.ts";
import { renewHouseKey } from "../../use-cases/chronicle/renew-house-key.ts";
import { signCheckpoint } from "../../use-cases/chronicle/sign-checkpoint.ts";
import { takeChanges } from "../../use-cases/chronicle/take-changes.ts";
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
/** Reads what was sent, then does it; nothing is done where something is wrong with what was sent. */
type Act = (input: Input) => (ports: ReadingPorts) => Promise<object>;

/** All that can be asked of the history of the house and of its proof, by the last word of the address. */
export const CHRONICLE_ACTIONS: Readonly<Record<string, Act>> = {
  checkpoints: (input) => {
    const after = input.optional("after");
    return (ports) => listCheckpoints(ports, after);
  },
  "sign-checkpoint": () => (ports) => signCheckpoint(ports),
  "renew-key": () => (ports) => renewHouseKey(ports),
  "check-checkpoint": (input) => async (ports) => {
    const checkpoint = readCheckpoint(input.value("checkpoint"));
    if (isProblem(checkpoint)) return { refused: [checkpoint] };
    return { ...(await judgeCheckpoint(ports, checkpoint)), checkpoint };
  },
  history: (input) => {
    const after = input.optional("after");
    return (ports) => listHistory(ports, after);
  },
  difference: (input) => {
    const asked = { from: input.number("from"), to: input.number("to") };
    const skip = input.has("skip") ? input.number("skip") : 0;
    return (ports) => compareRevisions(ports, { ...asked, skip });
  },
  follow: (input) => {
    const about = input.text("about");
    return (ports) => followThing(ports, about);
  },
  unfollow: (input) => {
    const about = input.text("about");
    return (ports) => unfollowThing(ports, about);
  },
  following: (input) => {
    const about = input.text("about");
    return (ports) => findFollowing(ports, about);
  },
  digest: () => (ports) => readDigest(ports),
  "digest-seen": (input) => {
    const revision = input.number("revision");
    return (ports) => markDigestSeen(ports, revision);
  },
  give: (input) => {
    const since = input.number("since");
    return (ports) => giveChanges(ports, since);
  },
  take: (input) => {
    const isLook = input.value("look") !== false;
    const changes = readSharedChanges(input.value("changes"));
    return async (ports) =>
      isProblem(changes) ? { refused: [changes] } : takeChanges(ports, changes, isLook);
  },
  "sign-report": (input) => {
    const examination = id<"examination">(input.text("examination"));
    return (ports) => keepReport(ports, examination);
  },
  "signed-reports": (input) => {
    const examination = id<"examination">(input.text("examination"));
    return (ports) => listKeptReports(ports, examination);
  },
  "signed-report": (input) => {
    const named = input.text("id");
    return (ports) => findKeptReport(ports, named);
  },
  "examine-again": (input) => {
    const sent = input.has("report") ? readKeptReport(input.value("report")) : input.text("id");
    return async (ports) => {
      if (isProblem(sent)) return { refused: [sent] };
      const kept = typeof sent === "string" ? await findKeptReport(ports, sent) : sent;
      return isRefusal(kept) ? kept : examineAgain(ports, kept);
    };
  },
};
