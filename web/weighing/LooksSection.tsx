import { id } from "#server/domain/ids.ts";
import type { Move } from "#server/domain/looking.ts";
import type { Look } from "#server/domain/weighing/looks.ts";
import type { WeighingWords } from "#server/domain/weighing/weighing-words.ts";
import { FeatureDrawing } from "#web/drawings/FeatureDrawing.tsx";
import { findDrawing } from "#web/drawings/find-drawing.ts";
import type { Move as MoveCode } from "#web/shared/apollo/schema-types.graphql.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { aidWords, moveWords } from "#web/shared/words/looking-words.ts";
import { Aged } from "./Aged.tsx";
import styles from "./Looks.module.css";
import type { LookedForFragment } from "./WeighPiece.graphql.ts";
import { useWeighed } from "./weighing-desk.ts";

/** How many are in sight at once; more unfold. */
const IN_SIGHT = 6;

const moveCode = (move: Move): MoveCode => move.toUpperCase().replaceAll(" ", "_") as MoveCode;

/** What to look at next, ordered by what it would tell for the trouble; never by whether it would support the claim. */
export function LooksSection() {
  const { weighed } = useWeighed();
  const { looks } = weighed.weighing;
  const words = weighed.words.looks;
  const item = (look: Look, at: number) => {
    const said = words?.[at];
    return said === undefined ? null : (
      <LookItem
        key={`${look.part} ${look.feature}`}
        look={look}
        said={said}
        term={weighed.terms.get(look.feature)}
      />
    );
  };
  return (
    <Aged stage="looks" id="look-next" aria-label="What to look at next" className={styles["section"]}>
      <h2>What to look at next</h2>
      {looks === undefined ? (
        <p className={styles["none"]}>Not worked out yet.</p>
      ) : looks.next.length === 0 ? (
        <p className={styles["none"]}>Nothing that is not recorded yet would tell anything more.</p>
      ) : (
        <>
          <p className={styles["none"]}>
            In the order of what each would tell for the trouble it takes, whichever way it turns out.
          </p>
          <ol className={styles["looks"]}>{looks.next.slice(0, IN_SIGHT).map(item)}</ol>
          {looks.next.length > IN_SIGHT ? (
            <Disclosure summary={`${looks.next.length - IN_SIGHT} more`}>
              <ol className={styles["looks"]}>
                {looks.next.slice(IN_SIGHT).map((look, n) => item(look, n + IN_SIGHT))}
              </ol>
            </Disclosure>
          ) : null}
        </>
      )}
    </Aged>
  );
}

interface ItemProps {
  look: Look;
  said: NonNullable<WeighingWords["looks"]>[number];
  term: LookedForFragment | undefined;
}

function LookItem({ look, said, term }: ItemProps) {
  const { onRecord } = useWeighed();
  const { moved, caution } = moveWords[moveCode(look.move)];
  const looking = term?.looking;
  const aids = looking?.aids.map((aid) => aidWords[aid]) ?? [];
  const broader = term?.broaderTerms.map((each) => id<"term">(each.id)) ?? [];
  const isDrawn = findDrawing(look.feature, broader) !== undefined;
  return (
    <li className={styles["look"]} data-drawn={isDrawn}>
      {isDrawn ? (
        <span className={styles["picture"]}>
          <FeatureDrawing term={look.feature} broaderTerms={broader} size={64} />
        </span>
      ) : null}
      <div className={styles["told"]}>
        <p className={styles["says"]}>{said.says}</p>
        <p className={styles["line"]}>{said.because}</p>
        <p className={styles["line"]}>
          {moved}
          {aids.length > 0 ? `; ${aids.join(", ")}` : null}.{" "}
          {caution === undefined ? null : <b className={styles["caution"]}>{caution}</b>}
        </p>
        {looking ? (
          <Disclosure summary="How to look" level={3}>
            <p className={styles["line"]}>{looking.how}</p>
            {looking.innocent ? <p className={styles["line"]}>{looking.innocent}</p> : null}
            <p className={styles["line"]}>
              {looking.basis === "FROM_MEMORY" ? "From memory" : "Common practice"}.{" "}
              <TextLink to={`/terms/${look.feature}`}>More on it</TextLink>
            </p>
          </Disclosure>
        ) : null}
        <p className={`screen-only ${styles["deeds"]}`}>
          <Button look="quiet" onPress={() => onRecord(look.part, look.feature, term?.label ?? look.feature)}>
            Record the answer<span className="visually-hidden">: {said.says}</span>
          </Button>
        </p>
      </div>
    </li>
  );
}
