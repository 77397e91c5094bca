// A PDF -> the same with the wish that print dialogues open at true size; tags, outline and bytes stay settled.
import { PDFDict, PDFDocument, PDFName } from "pdf-lib";

export async function leaveSize(bytes: Uint8Array): Promise<Uint8Array> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const { context, catalog } = document;
  const there = catalog.lookupMaybe(PDFName.of("ViewerPreferences"), PDFDict);
  const wishes = there ?? context.obj({});
  wishes.set(PDFName.of("PrintScaling"), PDFName.of("None"));
  catalog.set(PDFName.of("ViewerPreferences"), wishes);
  return document.save({ useObjectStreams: false, addDefaultPage: false });
}
