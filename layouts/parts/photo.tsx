// A picture file or a photograph with its caption; the browser takes the size and the format that suit it.
import type { VNode } from "preact";
import type { Image, Photo } from "../../src/leaves/leaf.ts";

/** `soon`: it is seen at once and isn't waited for. */
export const ImageFile = ({ of, root, soon }: { of: Image; root: string; soon?: boolean | undefined }): VNode => (
  <img
    src={`${root}${of.path}`}
    width={of.width}
    height={of.height}
    alt={of.alt}
    loading={soon ? undefined : "lazy"}
    decoding="async"
  />
);

type PhotoParts = { of: Photo; root: string; soon?: boolean | undefined };

/** `sizes`: how wide it stands on the page, in the words of the HTML standard. */
export const PhotoFile = ({ of, root, soon, sizes }: PhotoParts & { sizes: string }): VNode => (
  <picture>
    {of.sources.map(({ type, files }) => (
      <source
        type={type}
        srcset={files.map(({ path, width }) => `${root}${path} ${width}w`).join(", ")}
        sizes={sizes}
      />
    ))}
    <ImageFile of={of.image} root={root} soon={soon} />
  </picture>
);

export const PhotoFigure = ({ of, root, soon }: PhotoParts): VNode => (
  <figure class="photo">
    <PhotoFile of={of} root={root} soon={soon} sizes="(min-width: 60rem) 36rem, 100vw" />
    <figcaption>{of.caption}.</figcaption>
  </figure>
);
