import { createHash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import type { DemoWorkshop } from "./demo-workshop";

/** Files that belong to the rows, written beside the database once the rows are in. */
export type MadeFiles = {
  /** Keeps a file and its row, the same bytes once; answers the SHA-256 address. */
  readonly keep: (
    workshop: DemoWorkshop,
    name: string,
    mediaType: string,
    bytes: Uint8Array,
    at: Date,
  ) => string;
  /** `<folder>/<workshop>/<first two digits>/<sha256>` */
  readonly write: (folder: string) => Promise<void>;
};

export function madeFiles(): MadeFiles {
  const kept = new Map<
    string,
    { readonly folders: readonly string[]; readonly sha256: string; readonly bytes: Uint8Array }
  >();
  return {
    keep(workshop, name, mediaType, bytes, at) {
      const sha256 = createHash("sha256").update(bytes).digest("hex");
      const place = `${workshop.id}/${sha256}`;
      if (!kept.has(place)) {
        kept.set(place, { folders: [workshop.id, sha256.slice(0, 2)], sha256, bytes });
        workshop.rows.add("storedFile", {
          id: workshop.newId(at),
          workshopId: workshop.id,
          sha256,
          mediaType,
          sizeBytes: bytes.length,
          name,
          at,
        });
      }
      return sha256;
    },
    async write(folder) {
      for (const { folders, sha256, bytes } of kept.values()) {
        const place = join(folder, ...folders);
        await mkdir(place, { recursive: true });
        await writeFile(join(place, sha256), bytes);
      }
    },
  };
}

/** A one-page PDF (ISO 32000-1) that says what it stands for and that it is made. */
export function madePdf(lines: readonly string[]): Uint8Array {
  const text = lines.map((line) => `(${line.replace(/[\\()]/g, "\\$&")}) Tj T*`).join(" ");
  const content = `BT /F1 14 Tf 20 TL 60 760 Td ${text} ET`;
  const objects = [
    "<< /Type /Catalog /Pages 2 0 R >>",
    "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
    "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>",
    `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
  ];
  let body = "%PDF-1.4\n";
  const offsets = objects.map((object, index) => {
    const offset = body.length;
    body += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return `${String(offset).padStart(10, "0")} 00000 n \n`;
  });
  const start = body.length;
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${offsets.join("")}`;
  body += `${table}trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  return Buffer.from(body, "latin1");
}

/** A small grey picture (PNG, ISO/IEC 15948) with a darker disc: a stand-in for a photograph. */
export function madePng(shade: number): Uint8Array {
  const [width, height] = [160, 120];
  const row = (y: number) => [
    0,
    ...Array.from({ length: width }, (_, x) =>
      Math.hypot(x - width / 2, y - height / 2) < 40 ? shade : 150 + Math.floor((60 * y) / height),
    ),
  ];
  const pixels = Buffer.from(Array.from({ length: height }, (_, y) => row(y)).flat());
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 0, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(pixels)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(named), 4);
  return Buffer.concat([frame.subarray(0, 4), named, frame.subarray(4)]);
}

/** Cyclic redundancy check of the PNG specification, Annex D; Node has one only from 20.15 on. */
function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
}
