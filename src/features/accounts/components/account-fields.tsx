"use client";

import { getInputProps, type FieldMetadata } from "@conform-to/react";
import { useState, type ComponentProps } from "react";
import { describedBy, Field, TextInput } from "@/ui/field";

interface AccountFieldProps {
  readonly field: FieldMetadata<string>;
}

export function NameField({ field }: AccountFieldProps) {
  return (
    <Field id={field.id} label="Name" hint="Your helpers and testers see this name." errors={field.errors}>
      <TextInput
        {...getInputProps(field, { type: "text" })}
        key="name"
        autoComplete="name"
        aria-describedby={describedBy(field.id)}
      />
    </Field>
  );
}

export function EmailField({ field }: AccountFieldProps) {
  return (
    <Field id={field.id} label="E-mail" errors={field.errors}>
      <TextInput
        {...getInputProps(field, { type: "email" })}
        key="email"
        autoComplete="username"
        aria-describedby={describedBy(field.id)}
      />
    </Field>
  );
}

/** Tells password managers whose password stands beside it. */
export function KnownAddress({ email }: { readonly email: string }) {
  return <input type="text" hidden readOnly autoComplete="username" defaultValue={email} />;
}

interface PasswordFieldProps extends AccountFieldProps {
  readonly label: string;
  readonly hint?: string;
  /** For password managers. */
  readonly autoComplete: "current-password" | "new-password";
}

export function PasswordField({ field, label, hint, autoComplete }: PasswordFieldProps) {
  return (
    <Field id={field.id} label={label} hint={hint} errors={field.errors}>
      <PasswordInput
        {...getInputProps(field, { type: "password", value: false })}
        key={field.name}
        autoComplete={autoComplete}
        aria-describedby={describedBy(field.id)}
      />
    </Field>
  );
}

/** An input of a password that can show what is typed. */
function PasswordInput(props: Omit<ComponentProps<typeof TextInput>, "type">) {
  const [shown, setShown] = useState(false);
  return (
    <div className="relative">
      <TextInput
        {...props}
        type={shown ? "text" : "password"}
        className="pr-20"
        autoCapitalize="none"
        spellCheck={false}
      />
      <button
        type="button"
        aria-pressed={shown}
        aria-label="Show password"
        onClick={() => setShown(!shown)}
        className="absolute inset-y-0 right-0 rounded-md px-4 text-sm font-semibold text-thread hover:text-thread-dark"
      >
        {shown ? "Hide" : "Show"}
      </button>
    </div>
  );
}
