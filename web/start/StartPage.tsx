import { useQuery } from "@apollo/client/react";
import { type ReactNode, useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { axisForPieces } from "./axis-for-pieces.ts";
import { PieceList } from "./PieceList.tsx";
import { ScribedJoint } from "./ScribedJoint.tsx";
import { StartPageDocument, type StartPageQuery } from "./StartPage.graphql.ts";
import styles from "./StartPage.module.css";
import { useBeginDialog } from "./use-begin-dialog.ts";

const PIECES_AT_ONCE = 20;

/** Where one begins: one's own examinations and the demonstrations. What it is for stands there before they are read. */
export function StartPage() {
  const { data, error, fetchMore } = useQuery(StartPageDocument, {
    variables: { first: PIECES_AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const [isBeginning, setIsBeginning] = useState(false);
  const BeginDialog = useBeginDialog();
  if (error && !data) throw error;
  const pieces = data?.examinations.edges.map((edge) => edge.node);
  const hasOwn = pieces?.some(({ piece }) => !piece.invented) ?? false;
  const begin = (
    <div className={styles["begin"]}>
      <Button look="main" onPress={() => setIsBeginning(true)}>
        Begin an examination
      </Button>
      <TextLink to="/plan">Plan a look</TextLink>
      <TextLink to="/sheets">Field sheets</TextLink>
    </div>
  );
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
        {hasOwn ? begin : null}
      </div>
      {pieces === undefined ? (
        <Waiting what="the pieces" isPage />
      ) : (
        <>
          {hasOwn ? null : <NoneYet begin={begin} />}
          <PieceLists pieces={pieces} />
        </>
      )}
      {data ? (
        <ShowMore list={data.examinations} onMore={(after) => fetchMore({ variables: { after } })} />
      ) : null}
      {isBeginning && BeginDialog ? <BeginDialog isOpen onOpenChange={setIsBeginning} /> : null}
    </>
  );
}

const NoneYet = ({ begin }: { begin: ReactNode }) => (
  <section className={styles["empty"]}>
    <h2>Your examinations</h2>
    <p>
      There are none yet. Begin one with what is claimed of the piece, or open a demonstration below to see
      what comes of it.
    </p>
    {begin}
  </section>
);

type Pieces = readonly StartPageQuery["examinations"]["edges"][number]["node"][];

/** One's own and the invented ones, all drawn on one axis of years. */
function PieceLists({ pieces }: { pieces: Pieces }) {
  const axis = axisForPieces(pieces);
  const own = pieces.filter(({ piece }) => !piece.invented);
  const invented = pieces.filter(({ piece }) => piece.invented);
  return (
    <>
      {own.length > 0 ? <PieceList title="Your examinations" pieces={own} axis={axis} /> : null}
      {invented.length > 0 ? (
        <PieceList
          title="Demonstrations"
          beside="invented; the evidence against them is real"
          pieces={invented}
          axis={axis}
        />
      ) : null}
    </>
  );
}
