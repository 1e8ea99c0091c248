import { useQuery } from "@apollo/client/react";
import { useRef } from "react";
import { lookedOn } from "#web/answers/last-looked.ts";
import { useInView } from "../shared/navigation/use-in-view.ts";
import { sayFailure } from "../shared/ui/say-failure.ts";
import type { YearAxis } from "../shared/years/year-axis.ts";
import styles from "./PieceRow.module.css";
import { PieceStripsDocument } from "./PieceStrips.graphql.ts";
import { Shifted } from "./Shifted.tsx";
import { StripsThumbnail } from "./StripsThumbnail.tsx";

interface Props {
  id: string;
  axis: YearAxis;
}

/** What comes of a piece: a sentence and its strips, examined when the row comes into sight. */
export function PieceState({ id, axis }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const isInView = useInView(place);
  const { data, error } = useQuery(PieceStripsDocument, {
    variables: { id, since: lookedOn(id) ?? null },
    skip: !isInView,
    fetchPolicy: "cache-and-network",
  });
  const examined = data?.examination?.examined;
  const changed = data?.examination?.standing.changedSince;
  return (
    <div className={styles["state"]}>
      <div className={styles["headline"]}>
        <p>
          {examined?.__typename === "Examined" ? examined.words.headline : null}
          {examined?.__typename === "Refused"
            ? examined.problems.map(({ message }) => message).join(" ")
            : null}
          {error ? sayFailure(error).what : null}
        </p>
        {changed && changed.lines.length > 0 ? <Shifted changed={changed} /> : null}
      </div>
      <div ref={place} className={styles["strips"]}>
        {examined?.__typename === "Examined" ? (
          <StripsThumbnail report={examined.report} axis={axis} />
        ) : null}
      </div>
    </div>
  );
}
