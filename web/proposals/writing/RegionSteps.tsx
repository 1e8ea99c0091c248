import { useQuery } from "@apollo/client/react";
import { Button } from "#web/shared/ui/Button.tsx";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { RegionsAroundDocument } from "./Writing.graphql.ts";
import styles from "./writing.module.css";

/** Where a claim holds: by typing, or by steps down the tree of regions. */
export function RegionSteps() {
  const { fields, put } = useFormDesk();
  const { data } = useQuery(RegionsAroundDocument);
  const regions = data?.terms.edges.map(({ node }) => node) ?? [];
  const byId = new Map(regions.map((region) => [region.id, region]));
  const chosen = fields["region"]?.trim() || undefined;
  const path: string[] = [];
  for (let at = chosen; at !== undefined && !path.includes(at); at = byId.get(at)?.broader?.id)
    path.unshift(at);
  const below = regions
    .filter(
      ({ id, broader }) =>
        (chosen === undefined ? !broader || !byId.has(broader.id) : broader?.id === chosen) && id !== chosen,
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
        {below.map(({ id, label }) => (
          <Button key={id} look="quiet" onPress={() => put({ region: id })}>
            {label}
          </Button>
        ))}
      </fieldset>
    </div>
  );
}
