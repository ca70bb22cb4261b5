-- Typed numbers stand under the paths of the document, as changes do: allowances.hem.cm, and no longer allowances.hem.all.
CREATE FUNCTION path_of_number("path" text, "pattern" jsonb) RETURNS text LANGUAGE plpgsql AS $$
DECLARE
  "list" text := split_part("path", '.', 1);
  "id" text := split_part("path", '.', 2);
  "size" text := split_part("path", '.', 3);
  "item" text;
BEGIN
  IF "path" !~ '^(allowances|lengths|targets)\.[^.]+\.[^.]+$' THEN
    RETURN "path";
  END IF;
  "item" := CASE
    WHEN "list" <> 'targets' THEN "list" || '.' || "id" || '.cm'
    WHEN jsonb_path_exists("pattern", '$.measurements[*] ? (@.id == $id).target.cm', jsonb_build_object('id', "id"))
      THEN 'measurements.' || "id" || '.target.cm'
    ELSE 'measurements.' || "id" || '.target.easeCm'
  END;
  RETURN "item" || CASE WHEN "size" = 'all' THEN '' ELSE '.' || "size" END;
END
$$;

CREATE FUNCTION paths_of_numbers("by_path" jsonb, "pattern" jsonb) RETURNS jsonb LANGUAGE sql AS $$
  SELECT coalesce(jsonb_object_agg(path_of_number("key", "pattern"), "value"), '{}') FROM jsonb_each("by_path")
$$;

-- Unusual numbers that a draft confirms.
UPDATE "draft" SET "typed" = jsonb_set("typed", '{meant}', paths_of_numbers("typed" -> 'meant', "typed" -> 'pattern'))
  WHERE jsonb_typeof("typed" -> 'meant') = 'object';
UPDATE "conflicting_draft"
  SET "typed" = jsonb_set("typed", '{meant}', paths_of_numbers("typed" -> 'meant', "typed" -> 'pattern'))
  WHERE jsonb_typeof("typed" -> 'meant') = 'object';

-- Numbers that somebody corrects by hand, and what was wrong with them.
ALTER TABLE "plan" DISABLE TRIGGER "plan_never_changes";
UPDATE "plan" SET "request" = jsonb_set("request", '{typed}', paths_of_numbers("request" -> 'typed', "revision"."document"))
  FROM "call", "revision"
  WHERE "plan"."request" ->> 'kind' = 'correction' AND "call"."id" = "plan"."call_id"
    AND "revision"."pattern_id" = "call"."pattern_id" AND "revision"."number" = "plan"."base_number";
UPDATE "plan" SET "output" = jsonb_set("plan"."output"::jsonb, '{faults}', (
    SELECT coalesce(jsonb_agg(jsonb_set("fault", '{path}', to_jsonb(path_of_number("fault" ->> 'path', "revision"."document")))
      ORDER BY "position"), '[]')
    FROM jsonb_array_elements("plan"."output"::jsonb -> 'faults') WITH ORDINALITY AS "each"("fault", "position")))::text
  FROM "call", "revision"
  WHERE "plan"."request" ->> 'kind' = 'correction' AND "plan"."output" LIKE '{"status":"faults"%'
    AND "call"."id" = "plan"."call_id"
    AND "revision"."pattern_id" = "call"."pattern_id" AND "revision"."number" = "plan"."base_number";
ALTER TABLE "plan" ENABLE TRIGGER "plan_never_changes";

DROP FUNCTION paths_of_numbers(jsonb, jsonb);
DROP FUNCTION path_of_number(text, jsonb);
