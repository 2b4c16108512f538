// Read only when the script before it did not come to its end.
/exit 1
