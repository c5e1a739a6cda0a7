# Frosts of each city and winter (July to June), from weather.csv. One line a winter:
# city, year in which it began, coldest night and its first date,
# then first date, last date and number of days with a minimum <= 0, -2.2, -5 and -10 degrees C.
BEGIN {
  FS = ","; OFS = ","
  split("0 -2.2 -5 -10", limit, " ")
  print "location,winter,coldest_c,coldest_on,first_0,last_0,days_0,first_2.2,last_2.2,days_2.2," \
      "first_5,last_5,days_5,first_10,last_10,days_10"
}
NR == 1 {
  for (i = 1; i <= NF; i++) column[$i] = i
  next
}
{
  date = $column["date"]; min = $column["temp_min"] + 0
  winter = substr(date, 1, 4) - (substr(date, 6, 2) + 0 < 7)
  key = $column["location"] OFS winter
  if (!(key in coldest)) order[++winters] = key
  if (!(key in coldest) || min < coldest[key]) { coldest[key] = min; on[key] = date }
  for (i = 1; i <= 4; i++) {
    if (min <= limit[i] + 0) {
      if (!((key, i) in days)) first[key, i] = date
      last[key, i] = date
      days[key, i]++
    }
  }
}
END {
  for (w = 1; w <= winters; w++) {
    key = order[w]
    line = key OFS sprintf("%.1f", coldest[key]) OFS on[key]
    for (i = 1; i <= 4; i++) line = line OFS first[key, i] OFS last[key, i] OFS days[key, i] + 0
    print line
  }
}
