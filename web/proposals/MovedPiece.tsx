import { useState } from "react";
import { AnswerInStrips } from "#web/answers/AnswerInStrips.tsx";
import { ShiftedShares } from "#web/answers/ShiftedShares.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./Impact.module.css";
import type { MovedPieceFieldsFragment } from "./ImpactOfProposal.graphql.ts";
import { type Side, stripsOfSide } from "./strips-of-side.ts";

/** One stored piece that would come to something else: in words, then its strips as they are and as they would be. */
export function MovedPiece({
  piece,
  isOpenAtFirst,
}: {
  piece: MovedPieceFieldsFragment;
  isOpenAtFirst: boolean;
}) {
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  const { id, title, invented, headline, headlineBefore, lines } = piece;
  return (
    <section className={styles["piece"]} aria-label={title}>
      <h3>
        <TextLink to={`/pieces/${id}`}>{title}</TextLink>
        {invented ? <span className={styles["beside"]}> · invented</span> : null}
      </h3>
      {headline ? (
        <p>
          Would read: <b>{headline}</b> <span className={styles["beside"]}>It reads: {headlineBefore}</span>
        </p>
      ) : (
        <p>Its conclusion would read the same.</p>
      )}
      <ul className={styles["shifts"]}>
        {lines.map(({ kind, strip, says, before, now, odds }) => (
          <li key={`${kind} ${strip} ${says}`}>
            {says}: <b>{now}</b> <span className={styles["beside"]}>instead of: {before}</span>
            {odds ? (
              <ShiftedShares
                sides={[
                  { name: "As it is", odds: odds.before },
                  { name: "As it would be", odds: odds.now },
                ]}
              />
            ) : null}
          </li>
        ))}
      </ul>
      {piece.before && piece.after ? (
        <Disclosure
          summary="The strips, as they are and as they would be"
          level={4}
          isOpen={isOpen}
          onOpenChange={setOpen}
        >
          {isOpen ? <BothStrips piece={piece} before={piece.before} after={piece.after} /> : null}
        </Disclosure>
      ) : null}
    </section>
  );
}

function BothStrips({
  piece,
  before,
  after,
}: {
  piece: MovedPieceFieldsFragment;
  before: Side;
  after: Side;
}) {
  const shown = [...new Set(piece.lines.flatMap(({ strip }) => strip ?? []))];
  const [was, is] = stripsOfSide(piece, before, after);
  const shows = shown.length > 0 ? shown : undefined;
  return (
    <div className={styles["both"]}>
      <figure>
        <figcaption>As it is</figcaption>
        <AnswerInStrips answer={was} shows={shows} tells={[]} />
      </figure>
      <figure>
        <figcaption>As it would be</figcaption>
        <AnswerInStrips answer={is} shows={shows} tells={[]} />
      </figure>
    </div>
  );
}
