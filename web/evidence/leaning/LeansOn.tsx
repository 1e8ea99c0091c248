import { useSuspenseQuery } from "@apollo/client/react";
import { Suspense, useState, useTransition } from "react";
import { Button } from "../../shared/ui/Button.tsx";
import { Waiting } from "../../shared/ui/Waiting.tsx";
import reading from "../reading.module.css";
import { LeaningDocument } from "./Leaning.graphql.ts";
import { LeaningItem } from "./LeaningItem.tsx";
import styles from "./LeansOn.module.css";

/** Which findings of which examinations lean on a claim, and how they would stand without it. */
export const LeansOn = ({ claim }: { claim: string }) => (
  <section className={reading["section"]} aria-labelledby="leaning-heading">
    <h2 id="leaning-heading">
      What leans on it <span>· in the examinations kept here</span>
    </h2>
    <Suspense fallback={<Waiting what="the examinations" />}>
      <Looked claim={claim} before={0} found={0} />
    </Suspense>
  </section>
);

interface Props {
  claim: string;
  after?: string;
  /** Examinations looked through already, and those of them that lean on it. */
  before: number;
  found: number;
}

/** One page of examinations looked through, and where wanted the next. */
function Looked({ claim, after, before, found }: Props) {
  const { data } = useSuspenseQuery(LeaningDocument, {
    variables: { id: claim, ...(after === undefined ? {} : { after }) },
    fetchPolicy: "cache-and-network",
  });
  const [goesOn, setGoesOn] = useState(false);
  const [isLoading, startLoading] = useTransition();
  if (!data.claim) return null;
  const { looked, total, endCursor, examinations } = data.claim.leaning;
  const seen = before + looked;
  return (
    <>
      <ul className={styles["pieces"]}>
        {examinations.map((each) => (
          <LeaningItem key={each.examination.id} leaning={each} />
        ))}
      </ul>
      {goesOn && endCursor !== null ? (
        <Looked claim={claim} after={endCursor} before={seen} found={found + examinations.length} />
      ) : (
        <p className={styles["looked"]}>
          {sayLooked(seen, total, found + examinations.length)}{" "}
          {endCursor === null ? null : (
            <Button look="quiet" isDisabled={isLoading} onPress={() => startLoading(() => setGoesOn(true))}>
              Look through more
            </Button>
          )}
        </p>
      )}
    </>
  );
}

function sayLooked(seen: number, total: number, found: number): string {
  if (total === 0) return "No piece has been examined yet.";
  const all = total === 1 ? "The one examination" : `All ${total} examinations`;
  const through = seen < total ? `${seen} of ${total} examinations` : all;
  return found === 0
    ? `${through} looked through: nothing in ${total === 1 ? "it" : "them"} leans on this claim.`
    : `${through} looked through.`;
}
