import { GraphQLError } from "graphql";
import { isProblem } from "../domain/problem.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import { standingRevision } from "../use-cases/standing-revision.ts";
import type { Context } from "./context.ts";

/** The revision that an argument asks for; undefined is the newest. Throws an error of its own code if there is none. */
export async function readOn(
  context: Context,
  asked: number | null | undefined,
): Promise<RevisionNumber | undefined> {
  if (asked === null || asked === undefined) return undefined;
  const revision = await standingRevision(context, asked);
  if (isProblem(revision)) throw new GraphQLError(revision.message, { extensions: { code: revision.code } });
  return revision;
}
