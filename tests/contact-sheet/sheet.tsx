import "#web/shared/look/fonts.css";
import "#web/shared/look/tokens.css";
import "#web/shared/look/base.css";
import "./sheet.css";
import { createRoot } from "react-dom/client";
import { ALL_DRAWINGS, type DrawingKey } from "#web/drawings/features/all-drawings.ts";
import { DrawnFeature } from "#web/drawings/features/DrawnFeature.tsx";

/** Beginnings of the keys that are shown; all without them. */
const wanted = new URLSearchParams(location.search).getAll("key");
const keys = (Object.keys(ALL_DRAWINGS) as DrawingKey[]).filter(
  (key) => wanted.length === 0 || wanted.some((word) => key.startsWith(word)),
);

createRoot(document.getElementById("root") as HTMLElement).render(
  keys.map((key) => (
    <figure key={key}>
      <DrawnFeature drawing={key} size={64} />
      <DrawnFeature drawing={key} size={128} />
      <figcaption>{key}</figcaption>
    </figure>
  )),
);
