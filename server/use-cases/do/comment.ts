import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import { checkLength, LONGEST_TEXT } from "../../domain/proposals/check-words.ts";
import {
  COMMENT_CARD,
  type Comment,
  commentOf,
  commentWrite,
  type KeptComment,
  MOST_COMMENTS,
} from "../../domain/proposals/comment.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { findTalkedAbout } from "../ask/find-talked-about.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";

type Ports = Acting & { readonly store: Store; readonly newSuffix: NewSuffix };

/** Persons that one comment can call. */
const MOST_MENTIONS = 20;

/** What is said, on what, in answer to which comment, and who is called by it. */
export type Said = Pick<Comment, "on" | "text" | "answers" | "mentions">;

/** Keeps a comment on a proposal or a dispute. Refused where somebody is called who may not see what it is about. */
export async function comment(
  ports: Ports,
  { on, text, answers, mentions }: Said,
): Promise<KeptComment | Refusal> {
  const unable = refuseCaller(ports, "talk about a proposal");
  if (unable) return unable;
  const about = await findTalkedAbout(ports, on);
  if (about === undefined)
    return {
      refused: [
        problem("UNKNOWN_PROPOSAL", `There is no proposal or dispute ${on}, or it is somebody's draft.`, [
          "on",
        ]),
      ],
    };
  const called = [...new Set(mentions)];
  const refusal =
    refusalFrom([
      ...(text.trim() === "" ? [problem("EMPTY_LIST", "Say something.", ["text"])] : []),
      ...checkLength("text", text, LONGEST_TEXT),
      ...(called.length > MOST_MENTIONS
        ? [problem("TOO_LARGE", `At most ${MOST_MENTIONS} persons are called by one comment.`, ["mentions"])]
        : []),
    ]) ??
    (await refuseMentions(ports, called, about.isSeenByAll)) ??
    (answers === undefined ? undefined : await refuseAnswer(ports, answers, on));
  if (refusal) return refusal;
  const key = { name: "on", value: on };
  if ((await ports.store.listCards({ kind: COMMENT_CARD, key }, { first: 1 })).total >= MOST_COMMENTS)
    return {
      refused: [
        problem(
          "TOO_LARGE",
          `At most ${MOST_COMMENTS} things are said of one proposal or dispute. Bring it to an end, or make another that says what is still open.`,
          ["on"],
        ),
      ],
    };
  const at = ports.now();
  const id = `comment.${at}-${ports.newSuffix()}`;
  const along = signed(ports, "comment", on);
  const said: Comment = {
    ...{ on, text, at, by: along.deed.by, mentions: called },
    ...(answers === undefined ? {} : { answers }),
  };
  const written = await ports.store.writeCards({ ...along, cards: [commentWrite(id, said)] });
  return isProblem(written) ? { refused: [written] } : { id, ...said };
}

async function refuseMentions({ store }: Ports, called: readonly string[], isSeenByAll: boolean) {
  const people = await store.cards(PERSON_CARD, called);
  return refusalFrom(
    called.flatMap((id, i) => {
      const card = people.get(id);
      const person = card && personOf(card);
      if (person?.state !== "active")
        return [
          problem("UNKNOWN_PERSON", "Nobody in this house is called so; choose from the list.", [
            "mentions",
            i,
          ]),
        ];
      return isSeenByAll
        ? []
        : [
            problem("NOT_ALLOWED", "A draft is shown to nobody else: open it before you call others.", [
              "mentions",
              i,
            ]),
          ];
    }),
  );
}

async function refuseAnswer({ store }: Ports, answers: string, on: string) {
  const card = await store.card(COMMENT_CARD, answers);
  if (card !== undefined && commentOf(card).on === on) return undefined;
  return refusalFrom([
    problem("WRONG_STATE", "What this answers is not said here; answer another, or none.", ["answers"]),
  ]);
}
