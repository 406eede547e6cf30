"use client";

import { useEffect, useState } from "react";
import { FileField } from "@/design/file-field";

interface PhotoFieldProps {
  readonly label: string;
  readonly onPhoto: (photo: File | null) => void;
  readonly help?: string;
}

/** A photo from the camera, shown before it goes. */
export function PhotoField({ label, onPhoto, help }: PhotoFieldProps) {
  const [shown, setShown] = useState<string | null>(null);
  useEffect(() => () => void (shown && URL.revokeObjectURL(shown)), [shown]);
  return (
    <div className="card-photo-field">
      <FileField
        name="photo"
        label={label}
        accept="image/*"
        fromCamera
        {...(help === undefined ? {} : { help })}
        onChange={([photo]) => {
          onPhoto(photo ?? null);
          setShown(photo ? URL.createObjectURL(photo) : null);
        }}
      />
      {shown && (
        // biome-ignore lint/performance/noImgElement: it is on this device only; there is nothing to optimise.
        <img className="card-photo" src={shown} alt="What goes with this entry" />
      )}
    </div>
  );
}
