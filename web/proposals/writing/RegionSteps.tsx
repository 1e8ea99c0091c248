import { type EachTerm, useEveryTerm } from "#web/shared/terms/use-every-term.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { useSomeOf } from "#web/shared/ui/use-some-of.tsx";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import styles from "./writing.module.css";

/** Where a claim holds: by typing, or by steps down the tree of regions. */
export function RegionSteps() {
  const { fields, put } = useFormDesk();
  const regions = useEveryTerm("REGION");
  const byId = new Map(regions.map((region) => [region.id, region]));
  const chosen = fields["region"]?.trim() || undefined;
  const path: string[] = [];
  for (let at = chosen; at !== undefined && !path.includes(at); at = byId.get(at)?.broader?.id)
    path.unshift(at);
  const below = regions
    .filter(
      ({ id, broader, mergedInto }) =>
        mergedInto === null &&
        (chosen === undefined ? !broader || !byId.has(broader.id) : broader?.id === chosen) &&
        id !== chosen,
    )
    .toSorted((a, b) => a.label.localeCompare(b.label, "en"));
  const nameOf = (region: string) => byId.get(region)?.label ?? region;
  return (
    <div className={styles["group"]}>
      <NamedTermField of="region" label="Where it holds" placeholder="everywhere" />
      <fieldset className={styles["steps"]} aria-label="Steps down the regions">
        {chosen === undefined ? null : (
          <Button look="quiet" onPress={() => put({ region: "" })}>
            everywhere
          </Button>
        )}
        {path.map((region) => (
          <span key={region}>
            {"› "}
            {region === chosen ? (
              <strong>{nameOf(region)}</strong>
            ) : (
              <Button look="quiet" onPress={() => put({ region })}>
                {nameOf(region)}
              </Button>
            )}
          </span>
        ))}
        {below.length > 0 ? (
          <span className={styles["beside"]}>{chosen === undefined ? "or only in" : "or nearer:"}</span>
        ) : null}
        <Below key={chosen ?? ""} regions={below} onChoose={(region) => put({ region })} />
      </fieldset>
    </div>
  );
}

/** Steps that are in sight before the rest is asked for. */
const AT_FIRST = 30;

function Below({ regions, onChoose }: { regions: readonly EachTerm[]; onChoose: (region: string) => void }) {
  const { shown, rest } = useSomeOf(regions, AT_FIRST);
  return (
    <>
      {shown.map(({ id, label }) => (
        <Button key={id} look="quiet" onPress={() => onChoose(id)}>
          {label}
        </Button>
      ))}
      {rest}
    </>
  );
}
