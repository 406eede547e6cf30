"use client";

import { useState } from "react";
import { FileField } from "@/design/file-field";
import { Photos } from "./photos";

type Answer =
  | { readonly ok: true; readonly sha256: string }
  | { readonly ok: false; readonly refusal: { readonly sentence: string } };

/** Photos go to the workshop one by one as they are taken; the form then only names them. */
export function CheckInPhotos() {
  const [kept, setKept] = useState<readonly string[]>([]);
  const [sending, setSending] = useState(0);
  const [sentence, setSentence] = useState<string | null>(null);
  const [round, setRound] = useState(0);

  async function keep(photos: readonly File[]) {
    setSentence(null);
    for (const photo of photos) {
      setSending((count) => count + 1);
      const answer = await sendPhoto(photo);
      setSending((count) => count - 1);
      if (answer.ok) setKept((before) => [...new Set([...before, answer.sha256])]);
      else setSentence(answer.refusal.sentence);
    }
    // A fresh picker, so that the same picture can be chosen again after a refusal.
    setRound((before) => before + 1);
  }

  return (
    <div className="card-photo-field">
      <FileField
        key={round}
        name="camera"
        label="Photos"
        accept="image/*"
        fromCamera
        multiple
        help="All sides, wheels, and every mark. JPEG, PNG, WebP or HEIC, at most 15 MB each."
        onChange={(photos) => void keep(photos)}
      />
      {sentence && (
        <p className="field-error" role="alert">
          {sentence}
        </p>
      )}
      <p role="status" className="fine">
        {sending > 0 ? "Sending the photo…" : kept.length > 0 ? `${kept.length} at the workshop` : "None yet"}
      </p>
      <Photos addresses={kept} of="the vehicle as it came" />
      {kept.map((sha256) => (
        <input key={sha256} type="hidden" name="photo" value={sha256} readOnly />
      ))}
    </div>
  );
}

async function sendPhoto(photo: File): Promise<Answer> {
  const form = new FormData();
  form.set("photo", photo);
  try {
    const response = await fetch("/api/floor/photos", { method: "POST", body: form });
    return await response.json();
  } catch {
    return {
      ok: false,
      refusal: {
        sentence: "The photo did not get to the workshop. Try it again in a moment; the form is kept.",
      },
    };
  }
}
