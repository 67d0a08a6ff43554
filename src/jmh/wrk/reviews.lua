-- Posts a sample again and again: wrk -s src/jmh/wrk/reviews.lua http://localhost:8080/reviews
local file = assert(io.open("sample-submissions/sloping-garden-deck.json", "rb"))
wrk.method = "POST"
wrk.body = file:read("*a")
wrk.headers["Content-Type"] = "application/json"
file:close()
