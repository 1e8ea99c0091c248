import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import type { Plugin } from "vite";

const asGzip = promisify(gzip);
const asBrotli = promisify(brotliCompress);
/** Of 11: the last one saves two in a hundred and takes twice the time. */
const BROTLI_QUALITY = 10;

/** Puts the same after brotli and gzip beside each built text file, so that the server has nothing to compress while it answers. */
export const compressed: Plugin = {
  name: "scribeline:compressed",
  apply: "build",
  async writeBundle({ dir = "" }, bundle) {
    const files = Object.entries(bundle).filter(([name]) => /\.(js|css|html)$/.test(name));
    await Promise.all(
      files.map(async ([name, file]) => {
        const text = file.type === "chunk" ? file.code : file.source;
        const params = { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY };
        await writeFile(join(dir, `${name}.br`), await asBrotli(text, { params }));
        await writeFile(join(dir, `${name}.gz`), await asGzip(text, { level: 9 }));
      }),
    );
  },
};
