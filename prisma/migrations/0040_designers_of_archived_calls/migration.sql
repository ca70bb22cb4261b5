-- About an archived call nothing is sent to testers; its designer is still told what will be deleted.
DROP TRIGGER "message_not_of_archived_call" ON "message";
CREATE TRIGGER "message_not_of_archived_call" BEFORE INSERT ON "message"
  FOR EACH ROW WHEN (NEW."call_id" IS NOT NULL AND NEW."account_id" IS NULL)
  EXECUTE FUNCTION drop_messages_of_archived_calls();
