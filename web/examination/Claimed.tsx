import { memo, useState } from "react";
import type { Attribution } from "#server/domain/examination.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import type { Year } from "#server/domain/years.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { useFetched } from "#web/shared/ui/use-fetched.ts";
import { sayDating } from "#web/shared/words/say-dating.ts";
import styles from "./Claimed.module.css";
import { useDeeds } from "./desk.ts";

interface Props {
  attribution: Attribution;
  /** Year of the examination. */
  examined: Year;
}

const loadFields = () => import("./AttributionFields.tsx");

/** What is claimed, as a line; its fields unfold below it. A piece of which little is claimed shows them at once. */
export const Claimed = memo(function Claimed({ attribution, examined }: Props) {
  const { glossary } = useDeeds();
  const { date, region, form, style, maker } = attribution;
  const [isOpen, setIsOpen] = useState(form === undefined);
  const AttributionFields = useFetched(loadFields)?.AttributionFields;
  const dating = readDating(date, "event");
  const label = (term: typeof region) => (term === undefined ? undefined : glossary.labelOf(term));
  const stated = (name: string, value: string | undefined) =>
    value === undefined ? <span className={styles["open"]}>{name} not stated</span> : <b>{value}</b>;
  return (
    <div className={styles["claimed"]}>
      <p>
        Claimed: {stated("region", label(region))},{" "}
        {date === `../${examined}` ? <span className={styles["open"]}>date not stated</span> : <b>{date}</b>}
        {isProblem(dating) ? null : <span className={styles["read"]}> {sayDating(dating)}</span>} ·{" "}
        {stated("form", label(form))} · style {stated("", label(style))} · maker {stated("", label(maker))}{" "}
        <span className="screen-only">
          <Button look="quiet" aria-expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
            {isOpen ? "Close" : "Change what is claimed"}
          </Button>
        </span>
      </p>
      {isOpen && AttributionFields ? <AttributionFields /> : null}
    </div>
  );
});
