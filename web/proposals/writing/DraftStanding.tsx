import { Button } from "#web/shared/ui/Button.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "../proposals.module.css";
import type { useDraft } from "./use-draft.ts";

const WORDS = {
  nowhere: "Nothing is kept yet.",
  here: "The connection is gone. What you write is kept on this machine, and sent when it is back.",
  server: "Kept as a draft.",
  elsewhere: "This draft was changed in another tab or on another machine. Nothing of either is overwritten.",
  refused: "It could not be kept.",
} as const;

interface Props {
  draft: ReturnType<typeof useDraft>;
  onBegun: (id: string) => void;
}

/** Where what is written is kept, and what to do where two places differ. */
export function DraftStanding({ draft, onBegun }: Props) {
  const { kept, refused, place, isSaved } = draft;
  const at = place.current;
  return (
    <div>
      <p role="status" className={styles["beside"]}>
        {kept === "server" && !isSaved ? "Being kept …" : WORDS[kept]}{" "}
        {kept === "server" && at ? (
          <TextLink to={`/house/propose?draft=${at.id}`}>Its address, to go on elsewhere</TextLink>
        ) : null}
      </p>
      {kept === "elsewhere" && at ? (
        <div className={styles["acts"]}>
          <Button
            onPress={async () => {
              const other = await draft.goOnApart();
              if (other) onBegun(other.id);
            }}
          >
            Keep mine as a draft of its own
          </Button>
          <TextLink to={`/house/proposals/${at.id}`}>Read the other</TextLink>
        </div>
      ) : null}
      <div role="alert" className={styles["refusal"]}>
        {kept === "elsewhere" ? null : refused.map((message) => <p key={message}>{message}</p>)}
      </div>
    </div>
  );
}
