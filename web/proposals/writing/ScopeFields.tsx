import { NamedTermField } from "./NamedTermField.tsx";
import { RegionSteps } from "./RegionSteps.tsx";

/** Where a claim holds: in what region, on what form, on what part. */
export const ScopeFields = () => (
  <>
    <RegionSteps />
    <NamedTermField of="form" label="On what form" placeholder="any form" />
    <NamedTermField of="part" label="On what part" placeholder="any part" />
  </>
);
