import { encode } from "uqr";
import styles from "./account.module.css";

/** A text as a picture that cameras read: dark on light in every colour scheme, for cameras do not read the reverse. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { data, size } = encode(text, { ecc: "M", border: 4 });
  const squares = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : [])));
  return (
    <svg className={styles["qr"]} viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <rect width={size} height={size} fill="#fff" />
      <path d={squares.join("")} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
}
