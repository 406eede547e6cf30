import { expect, test } from "vitest";
import { UploadedFile } from "../paperwork/uploaded-file";
import { demoWorkshop } from "../testing/demo-workshop";
import { attachDocument, removeDocument } from "./item-documents";
import { showPart } from "./show-part";

const workshop = await demoWorkshop();
const code = "hp-pump-upgrade";
const pdf = (words: string) =>
  new UploadedFile("sheet.pdf", new TextEncoder().encode(`%PDF-1.4\n${words}\n%%EOF`));

test("a sheet is attached to an item, is there for everybody, and is removed again", async () => {
  const sheet = { code, title: "Fitting sheet", file: pdf("fitting") };
  const { documentId } = await workshop.done("manager", attachDocument, sheet);
  const shown = await workshop.done("technician", showPart, { part: "item", code });
  expect(shown.documents).toMatchObject([{ title: "Fitting sheet", mediaType: "application/pdf" }]);
  expect((await workshop.refused("manager", attachDocument, sheet)).code).toBe("document-there");
  expect((await workshop.refused("desk", removeDocument, { documentId })).code).toBe("not-allowed");
  await workshop.done("owner", removeDocument, { documentId });
  expect((await workshop.refused("owner", removeDocument, { documentId })).code).toBe("document-gone");
});

test("what is empty, too large, of no known kind or for no item is refused", async () => {
  const codeOf = async (change: object) =>
    (await workshop.refused("owner", attachDocument, { code, title: "Sheet", file: pdf("x"), ...change }))
      .code;
  expect(await codeOf({ file: new UploadedFile("none.pdf", new Uint8Array()) })).toBe("document-empty");
  expect(await codeOf({ file: new UploadedFile("big.pdf", new Uint8Array(21 * 1024 * 1024)) })).toBe(
    "document-too-large",
  );
  expect(await codeOf({ file: new UploadedFile("words.txt", new TextEncoder().encode("words")) })).toBe(
    "document-kind",
  );
  expect(await codeOf({ code: "no-such-item" })).toBe("part-not-found");
  expect(await codeOf({ title: " " })).toBe("invalid-input");
  expect(
    (await workshop.refused("desk", attachDocument, { code, title: "Sheet", file: pdf("y") })).code,
  ).toBe("not-allowed");
});
