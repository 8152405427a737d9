### reviewed: no
# 虚构的一晚自行演示时，画面下方那一行的话。
crew-evening = 虚构的一晚，自行演示：{ $who }收一台并不存在的机器。按 Ctrl+Q 结束。
crew-says = { $who }说：“{ $phrase }”
crew-presses = { $who }按：“{ $phrase }”
crew-next-passes-no-hold = 这里是安全确认。{ $who }累了，只说平常那个词：在这里不算数。
crew-short-press-passes-no-hold = 短按也过不了安全确认。
crew-read-back = 本机复述它听懂的话，等一声“对的”。
crew-power-cut = 一步做到一半，本机停电了。
crew-cut-is-over = 本机又开了。首页显示未完成的工作；记录一条也没丢。
crew-problem = 好像不对劲：{ $who }报告问题，一切停下。
crew-holds-again = 继续之前，再问一遍这段时间里可能变了的事。
crew-one-is-missing = { $who }少数了一个密封圈。若不清点，它就在机器里，或在甜筒里。
crew-other-language = 另一个人用另一种语言收尾。安全与否，再问眼下在场的人。
crew-time-passes = 时间过得比实际快。
crew-written = 每个回答都在记录里，带时间和回答方式。
crew-evening-over = 这一晚就是这样。早上由主管复核。
