interface FormTerm {
  readonly id: string;
  readonly label: string;
  readonly otherLabels: readonly string[];
  readonly broader: { readonly id: string } | null;
}

/** A form in a group, so many steps below the form that the group is named after. */
export type GroupedForm = FormTerm & { readonly depth: number };

/** Forms of one kind: that which they are all of first, then each followed by those of its kind. */
export interface FormGroup {
  readonly id: string;
  readonly label: string;
  readonly forms: readonly GroupedForm[];
}

const byLabel = (a: FormTerm, b: FormTerm): number => a.label.localeCompare(b.label, "en");

/** Groups forms by the broadest form around them, those that have all the words in a label or another name. */
export function groupForms(forms: readonly FormTerm[], words: string): readonly FormGroup[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const isFound = ({ label, otherLabels }: FormTerm): boolean => {
    const names = [label, ...otherLabels].join(" ").toLowerCase();
    return wanted.every((word) => names.includes(word));
  };
  const ids = new Set(forms.map(({ id }) => id));
  const under = Map.groupBy(forms.toSorted(byLabel), ({ broader }) =>
    broader && ids.has(broader.id) ? broader.id : "",
  );
  const walk = (form: FormTerm, depth: number): readonly GroupedForm[] => [
    { ...form, depth },
    ...(under.get(form.id) ?? []).flatMap((narrower) => walk(narrower, depth + 1)),
  ];
  return (under.get("") ?? [])
    .map((root) => ({ id: root.id, label: root.label, forms: walk(root, 0).filter(isFound) }))
    .filter((group) => group.forms.length > 0);
}
