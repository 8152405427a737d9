### 机器起草的文本，以及谁核对过。机器草稿。
### reviewed: no

texts-drafted = { $language }：机器起草 { $n } 条，未签字 { $left } 条
texts-signed-by = { $who } 已签字，{ $at }：{ $n } 条
texts-left = 现在的文本未签字：{ $where }
texts-nothing-left = 没有要签字的了。
texts-signed = { $who } 签了 { $n } 条。未签字：{ $left } 条。全部签完后，下次启动时“{ $mark }”会从屏幕上消失。
texts-withdrawn = 已撤回的签字：{ $n } 个。
