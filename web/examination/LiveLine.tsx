import { useEffect } from "react";
import { NewsLine } from "#web/shared/live/NewsLine.tsx";
import { useDesk } from "./desk.ts";
import { presenceInWords } from "./presence-in-words.ts";
import { useLive } from "./use-live.ts";

/** Things that somebody else changed which are named one by one. */
const MOST_NAMED = 3;

/** What others do with the piece while it is open. It moves nothing else, and takes no focus. */
export function LiveLine() {
  const { stored, piece, standing, chosenPart, editing, asked, theirs, heard, retry } = useDesk();
  const isUnreachable = standing.kind === "unreachable";
  const { state, others, count } = useLive({
    ...{ id: stored.id, part: chosenPart, heard },
    isEditing: editing !== undefined || asked !== undefined,
    onBack: () => isUnreachable && retry(),
  });
  useEffect(() => {
    if (!isUnreachable) return;
    window.addEventListener("online", retry);
    return () => window.removeEventListener("online", retry);
  }, [isUnreachable, retry]);
  const labelOf = (part: string) => piece.parts.find((each) => each.id === part)?.label;
  const present = presenceInWords(others, count, labelOf);
  const connection = connectionWords(state, isUnreachable);
  const changed = changedWords(theirs);
  return <NewsLine connection={connection} told={[changed, present.join(" ")]} />;
}

function connectionWords(state: ReturnType<typeof useLive>["state"], isUnreachable: boolean) {
  if (state === "catching up") return "Catching up with what others changed …";
  if (state !== "lost") return undefined;
  return isUnreachable
    ? "Connection lost. What you do here is kept, and stored when it is back."
    : "Connection lost: what others change does not arrive. Connecting again …";
}

function changedWords(theirs: readonly string[]): string | undefined {
  if (theirs.length === 0) return undefined;
  const named = theirs.slice(0, MOST_NAMED).join("; ");
  const more = theirs.length - MOST_NAMED;
  return `Somebody else changed: ${named}${more > 0 ? `; and ${more} more` : ""}.`;
}
