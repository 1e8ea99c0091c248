import { useSuspenseQuery } from "@apollo/client/react";
import { useState, useTransition } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { axisForPieces } from "./axis-for-pieces.ts";
import { PieceList } from "./PieceList.tsx";
import { ScribedJoint } from "./ScribedJoint.tsx";
import { StartPageDocument } from "./StartPage.graphql.ts";
import styles from "./StartPage.module.css";
import { useBeginDialog } from "./use-begin-dialog.ts";

const PIECES_AT_ONCE = 20;

/** Where one begins: one's own examinations and the demonstrations, all drawn on one axis of years. */
export function StartPage() {
  const { data, fetchMore } = useSuspenseQuery(StartPageDocument, {
    variables: { first: PIECES_AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const [isBeginning, setIsBeginning] = useState(false);
  const BeginDialog = useBeginDialog();
  const [isLoading, startLoading] = useTransition();
  const { edges, pageInfo, totalCount } = data.examinations;
  const pieces = edges.map((edge) => edge.node);
  const axis = axisForPieces(pieces);
  const begin = (
    <div className={styles["begin"]}>
      <Button look="main" onPress={() => setIsBeginning(true)}>
        Begin an examination
      </Button>
      <TextLink to="/plan">Plan a look</TextLink>
    </div>
  );
  const own = pieces.filter(({ piece }) => !piece.invented);
  const invented = pieces.filter(({ piece }) => piece.invented);
  return (
    <>
      <div className={styles["opening"]}>
        <PageHeading title="Pieces">
          Tests what is claimed of a piece of furniture against cited evidence of how furniture was made.
        </PageHeading>
        <ScribedJoint />
        <p className={styles["how"]}>
          Record the piece part by part: what you see, what you looked for and did not find, what could not be
          seen. Each thing is dated by the claims it rests on, and every step names its source.
        </p>
        {own.length > 0 ? begin : null}
      </div>
      {own.length > 0 ? (
        <PieceList title="Your examinations" pieces={own} axis={axis} />
      ) : (
        <section className={styles["empty"]}>
          <h2>Your examinations</h2>
          <p>
            There are none yet. Begin one with what is claimed of the piece, or open a demonstration below to
            see what comes of it.
          </p>
          {begin}
        </section>
      )}
      {invented.length > 0 ? (
        <PieceList
          title="Demonstrations"
          beside="invented; the evidence against them is real"
          pieces={invented}
          axis={axis}
        />
      ) : null}
      {pageInfo.hasNextPage ? (
        <p className={styles["more"]}>
          <Button
            isDisabled={isLoading}
            onPress={() =>
              startLoading(async () => void (await fetchMore({ variables: { after: pageInfo.endCursor } })))
            }
          >
            Show more
          </Button>{" "}
          {pieces.length} of {totalCount} shown
        </p>
      ) : null}
      {isBeginning && BeginDialog ? <BeginDialog isOpen onOpenChange={setIsBeginning} /> : null}
    </>
  );
}
