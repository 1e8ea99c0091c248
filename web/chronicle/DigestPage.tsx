import { useState } from "react";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { useAnswer } from "../shared/asking/use-answer.ts";
import { Button } from "../shared/ui/Button.tsx";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { type ChangedPiece, ChangedPieces } from "./ChangedPieces.tsx";
import styles from "./chronicle.module.css";
import { type FollowedThing, FollowedThings } from "./FollowedThings.tsx";

interface Digest {
  readonly newest: number;
  readonly seen?: number;
  readonly pieces: readonly ChangedPiece[];
  readonly followed: readonly FollowedThing[];
}

/** What changed for one's pieces and for what one follows, since it was read last. */
export function DigestPage() {
  const { answer, again } = useAnswer<Digest>("/chronicle/digest");
  const [marked, setMarked] = useState<Answered<object>>();
  const digest = answer && "done" in answer ? answer.done : undefined;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <InTheHouse />
        <PageHeading title="Digest">What changed for you</PageHeading>
        <p className={styles["note"]}>
          Your pieces are those whose report you signed and those you follow; where nobody signs in, all that
          lie here. Follow a term, a region, a source or a piece on its page.
        </p>
      </header>
      {answer === undefined ? <Waiting what="the digest" /> : null}
      <Refusals answer={answer} />
      {digest === undefined ? null : (
        <>
          <div className={styles["acts"]}>
            <p className={styles["note"]}>
              {digest.seen === undefined
                ? `Not read yet; the newest revision is ${digest.newest}.`
                : `Read up to revision ${digest.seen} of ${digest.newest}.`}
            </p>
            <Button
              isDisabled={digest.seen === digest.newest}
              onPress={async () => {
                setMarked(await askServer("/chronicle/digest-seen", { revision: digest.newest }));
                await again();
              }}
            >
              Mark as read
            </Button>
          </div>
          <Refusals answer={marked} />
          <ChangedPieces pieces={digest.pieces} />
          <FollowedThings things={digest.followed} newest={digest.newest} onLeft={again} />
        </>
      )}
    </article>
  );
}
