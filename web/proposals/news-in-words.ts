import type { ProposalState, Verdict } from "../shared/apollo/schema-types.graphql.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { stateWords, verdictWords } from "./proposal-words.ts";

interface Made {
  readonly by: { readonly id: string; readonly name: string | null };
  readonly at: string;
  readonly isMine: boolean;
}
/** What is seen of a proposal or a dispute at one moment. */
export interface SeenTalk {
  readonly version: number;
  readonly isMine: boolean;
  /** Left out of a dispute. */
  readonly state?: ProposalState;
  readonly reviews: readonly (Made & { readonly verdict: Verdict })[];
  /** How a dispute ended. */
  readonly ended?: Made;
  readonly comments: readonly (Made & { readonly id: string })[];
  readonly commentCount: number;
}

const and = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** What others did between two moments, as sentences; one's own doing is not news. */
export function newsInWords(before: SeenTalk, now: SeenTalk): readonly string[] {
  const reviews = now.reviews.filter(({ at }) => !before.reviews.some((one) => one.at === at));
  const isDecidedByMe = reviews.some(({ isMine }) => isMine);
  const words = reviews
    .filter(({ isMine }) => !isMine)
    .map((one) => `${sayPerson(one.by)} ${verdictWords[one.verdict]}.`);
  if (now.state !== undefined && now.state !== before.state) {
    const isByMaker = now.state === "OPEN" || now.state === "WITHDRAWN" || now.state === "DRAFT";
    if (!(isByMaker ? now.isMine : isDecidedByMe)) words.push(`It is now ${stateWords[now.state]}.`);
  } else if (now.state !== undefined && now.version !== before.version && !now.isMine)
    words.push("Its maker changed it: this is the new version.");
  if (now.ended && !before.ended && !now.ended.isMine) words.push(`${sayPerson(now.ended.by)} ended it.`);
  return [...words, ...saidInWords(before, now)];
}

function saidInWords(before: SeenTalk, now: SeenTalk): readonly string[] {
  const grown = now.commentCount - before.commentCount;
  if (grown <= 0) return [];
  const come = newComments(before, now);
  const others = come.filter(({ isMine }) => !isMine);
  if (others.length > 0)
    return [`${and.format([...new Set(others.map(({ by }) => sayPerson(by)))])} said something below.`];
  return grown > come.length ? ["More was said below."] : [];
}

/** What was said between two moments; what was only read later, page by page, is not new. */
export const newComments = (before: SeenTalk, now: SeenTalk): SeenTalk["comments"] =>
  now.commentCount > before.commentCount
    ? now.comments.filter(({ id }) => !before.comments.some((one) => one.id === id))
    : [];
