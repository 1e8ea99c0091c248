import { type Draft, isBlank, isDraft, isId, listOf, unknownFields, wrong } from "./draft.ts";
import { type Problem, problem } from "./problem.ts";

const BASES = ["published", "common practice", "from memory"];

/** At least one citation, each with an honest basis; a published one with its source and the place in it. */
export function checkCitations(citations: unknown, path: Problem["path"]): readonly Problem[] {
  if (citations === undefined || listOf(citations)?.length === 0)
    return [
      problem(
        "UNCITED_CLAIM",
        "The claim cites nothing; add a citation, or state that it is common practice or from memory.",
        path,
      ),
    ];
  const list = listOf(citations);
  if (!list) return [wrong("The citations", "a list", path)];
  return list.flatMap((citation, i) => checkCitation(citation, [...path, i]));
}

const FIELDS = ["basis", "source", "locator", "note"];

function checkCitation(citation: unknown, path: Problem["path"]): readonly Problem[] {
  if (!isDraft(citation) || !BASES.some((basis) => basis === citation["basis"]))
    return [wrong("The basis of a citation", BASES.join(", or "), [...path, "basis"])];
  const isPublished = citation["basis"] === "published";
  const problems: Problem[] = [...unknownFields(citation, FIELDS, "a citation", path)];
  problems.push(...(isPublished ? checkPublished(citation, path) : checkUnpublished(citation, path)));
  if (citation["note"] !== undefined && typeof citation["note"] !== "string")
    problems.push(wrong("The note of a citation", "a text, or left out", [...path, "note"]));
  return problems;
}

/** A source beside another basis would lend the claim more than was read. */
function checkUnpublished(citation: Draft, path: Problem["path"]): readonly Problem[] {
  return ["source", "locator"]
    .filter((field) => citation[field] !== undefined)
    .map((field) =>
      problem(
        "WRONG_FORMAT",
        `A citation on the basis “${citation["basis"]}” has no ${field}; take it out, or call the citation published once its text has been read.`,
        [...path, field],
      ),
    );
}

function checkPublished(citation: Draft, path: Problem["path"]): readonly Problem[] {
  const problems: Problem[] = [];
  if (!isId(citation["source"]))
    problems.push(wrong("The source of a published citation", "the id of a source", [...path, "source"]));
  if (isBlank(citation["locator"]))
    problems.push(
      problem(
        "MISSING_LOCATOR",
        "A published citation needs the place in its source; add a page, section, plate or number.",
        [...path, "locator"],
      ),
    );
  return problems;
}
